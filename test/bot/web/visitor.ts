// A browser's part on the wire: keeps its cookie, reads the token of the page's forms, posts them.

type Fields = Readonly<Record<string, string>>;

export function visitor(address: string) {
  let cookie = '';

  async function request(path: string, init: RequestInit = {}): Promise<Response> {
    const headers = new Headers(init.headers);
    if (cookie !== '') headers.set('cookie', cookie);
    const ask = () => fetch(`${address}${path}`, { ...init, headers, redirect: 'manual' });
    // A server that was away has closed the connection that `fetch` kept open for the next request.
    const response = await ask().catch(ask);
    for (const set of response.headers.getSetCookie()) cookie = set.split(';')[0] ?? '';
    return response;
  }

  const post = (path: string, fields: Fields, headers: Fields = {}) =>
    request(path, { method: 'POST', body: new URLSearchParams(fields), headers });

  async function token(path = '/'): Promise<string> {
    const page = await (await request(path)).text();
    return /name="token" value="([^"]+)"/.exec(page)?.[1] ?? '';
  }

  /** Chosen at the door, with the code where one is asked for. */
  async function enter(name: string, code = ''): Promise<Response> {
    return post('/join', { token: await token('/join'), code, as: name });
  }

  /** A line as the page's script sends it. */
  async function say(as: string, line: string, more: Fields = {}) {
    const fields = { token: await token(), form: crypto.randomUUID(), as, line, ...more };
    const response = await post('/say', fields, { accept: 'application/json' });
    const body: unknown = await response.json();
    return { status: response.status, body: body as { n?: number; html?: string; why?: string } };
  }

  return {
    request,
    post,
    token,
    enter,
    say,
    cookie: () => cookie,
    useCookie: (value: string) => {
      cookie = value;
    },
  };
}

export interface Heard {
  readonly event: string;
  readonly id: string;
  readonly data: string;
}

/** Reads a stream of events until `enough`, then hangs up. */
export async function listen(
  response: Response,
  enough: (heard: readonly Heard[]) => boolean,
): Promise<readonly Heard[]> {
  const heard: Heard[] = [];
  const reader = response.body?.getReader();
  const decoder = new TextDecoder();
  let text = '';
  while (reader !== undefined && !enough(heard)) {
    const { value, done } = await reader.read();
    if (done) break;
    text += decoder.decode(value, { stream: true });
    const blocks = text.split('\n\n');
    text = blocks.pop() ?? '';
    for (const block of blocks) heard.push(eventIn(block));
  }
  await reader?.cancel();
  return heard;
}

function eventIn(block: string): Heard {
  const all = (name: string) =>
    block
      .split('\n')
      .filter((line) => line.startsWith(`${name}: `))
      .map((line) => line.slice(name.length + 2));
  return { event: all('event')[0] ?? '', id: all('id')[0] ?? '', data: all('data').join('\n') };
}
