// Keeps a stream of server-sent events open and says truthfully whether it is. A browser gives up on a stream for good
// when it is once turned away, and does not notice a wireless that has only gone silent: both are seen to here.

const delaysMs = [500, 1000, 2000, 4000, 8000];
/** Three beats of the server without a word: nobody is there. */
const silentMs = 16_000;

/**
 * @param {{
 *   address: () => string,
 *   on: Record<string, (event: MessageEvent) => void>,
 *   onState: (state: 'connecting' | 'on' | 'lost') => void,
 * }} needs
 */
export function keepConnected({ address, on, onState }) {
  let source;
  let tries = 0;
  let retry;
  let silence;

  function open() {
    clearTimeout(retry);
    source?.close();
    source = new EventSource(address());
    for (const [name, listener] of Object.entries(on)) {
      source.addEventListener(name, (event) => {
        heard();
        listener(event);
      });
    }
    source.addEventListener('beat', heard);
    source.addEventListener('error', lost);
    expectSoon();
  }

  function heard() {
    tries = 0;
    onState('on');
    expectSoon();
  }

  function expectSoon() {
    clearTimeout(silence);
    silence = setTimeout(lost, silentMs);
  }

  function lost() {
    source?.close();
    clearTimeout(silence);
    clearTimeout(retry);
    onState('lost');
    retry = setTimeout(open, delaysMs[Math.min(tries, delaysMs.length - 1)]);
    tries += 1;
  }

  function now() {
    tries = 0;
    open();
  }

  window.addEventListener('online', now);
  window.addEventListener('offline', lost);
  window.addEventListener('pageshow', (event) => event.persisted && now());
  document.addEventListener('visibilitychange', () => {
    // A phone that slept may have missed the end of the stream.
    if (!document.hidden && source?.readyState !== EventSource.OPEN) now();
  });
  onState('connecting');
  open();
}
