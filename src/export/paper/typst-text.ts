import type { Line } from "../../pages/page-model.ts";

/**
 * A text that typst prints as it stands: every mark of its markup is escaped, and of what follows a call on the same line
 * the semicolon, which would end it unseen, and the bracket, which would give it more.
 */
export const escaped = (text: string): string => text.replace(/[\\#$*_`<>@=\-+/~[\]"'.:;(]/g, (mark) => `\\${mark}`);

/** A typst string. */
export const quoted = (text: string): string =>
  `"${text.replace(/[\\"]/g, (mark) => `\\${mark}`).replace(/\n/g, "\\n")}"`;

/** A line with its runs; what stands back is set in the quiet ink. */
export const lineText = (line: Line): string =>
  line.map((run) => (run.quiet === true ? `#quiet[${escaped(run.text)}]` : escaped(run.text))).join("");
