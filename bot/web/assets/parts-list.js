// Many parts at once: a file that is chosen is read into the form, where it can be looked over and is kept like any line while the
// wireless is away; a list that is pasted where one line is typed goes there too.

/** @param {{ line: HTMLInputElement, form: HTMLFormElement }} needs */
export function takeLists({ line, form }) {
  const { line: list, file } = form.elements;
  file.addEventListener('change', async () => {
    const [chosen] = file.files;
    if (chosen === undefined) return;
    list.value = textOf(await chosen.arrayBuffer());
    file.value = '';
  });
  line.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/\n\s*\S/.test(text)) return;
    event.preventDefault();
    form.closest('details').open = true;
    list.value = text;
    list.focus();
  });
}

/** Spreadsheets write in one of these, and do not say in which. */
function textOf(bytes) {
  const [first, second] = new Uint8Array(bytes);
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
