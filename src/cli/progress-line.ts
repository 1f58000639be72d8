/** How far long work is: a bar on a terminal, plain lines at each tenth elsewhere. */
export interface ProgressLine {
  readonly show: (done: number, all: number) => void;
  readonly end: (says: string) => void;
}

const width = 30;

/** A progress line on standard error, so that standard output stays the command's own. */
export function progressLine(what: string, stream: NodeJS.WriteStream = process.stderr): ProgressLine {
  let shown = -1;
  const show = (done: number, all: number): void => {
    const fraction = all === 0 ? 1 : done / all;
    const tenth = Math.floor(fraction * (stream.isTTY ? 100 : 10));
    if (tenth === shown) return;
    shown = tenth;
    const bar = "#".repeat(Math.round(fraction * width)).padEnd(width, ".");
    const percent = `${Math.round(fraction * 100)} %`;
    stream.write(stream.isTTY ? `\r${what} [${bar}] ${percent}` : `${what}: ${percent}\n`);
  };
  const end = (says: string): void => {
    if (stream.isTTY) stream.write("\n");
    stream.write(`${says}\n`);
  };
  return { show, end };
}
