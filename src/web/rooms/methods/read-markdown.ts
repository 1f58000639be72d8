/** A block of a method page. */
export type Block =
  | { readonly is: "heading"; readonly level: number; readonly text: string }
  | { readonly is: "paragraph"; readonly text: string }
  | { readonly is: "code"; readonly text: string }
  | { readonly is: "list"; readonly ordered: boolean; readonly items: readonly string[] }
  | { readonly is: "table"; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

/** A piece of a line. */
export interface Span {
  readonly is: "text" | "strong" | "emphasis" | "code" | "link";
  readonly text: string;
  readonly href?: string;
}

const listItem = /^\s*(?:[-*]|\d+\.)\s+/;
const isTableRow = (line: string): boolean => line.trim().startsWith("|");
const cellsOf = (line: string): string[] =>
  line
    .trim()
    .replace(/^\||\|$/g, "")
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim().replaceAll("\\|", "|"));

/** The blocks of a method page: headings, paragraphs, lists, tables and code; that is all that those pages use. */
export function readMarkdown(text: string): readonly Block[] {
  const lines = text.replaceAll("\r\n", "\n").split("\n");
  const blocks: Block[] = [];
  let at = 0;
  while (at < lines.length) {
    const { block, next } = blockAt(lines, at);
    if (block !== undefined) blocks.push(block);
    at = next;
  }
  return blocks;
}

interface Taken {
  readonly block?: Block;
  readonly next: number;
}

function blockAt(lines: readonly string[], at: number): Taken {
  const line = lines[at] ?? "";
  if (line.trim() === "") return { next: at + 1 };
  const heading = /^(#{1,4})\s+(.*)$/.exec(line);
  if (heading)
    return { block: { is: "heading", level: heading[1]?.length ?? 1, text: heading[2] ?? "" }, next: at + 1 };
  if (line.startsWith("```")) return codeAt(lines, at);
  if (isTableRow(line)) return tableAt(lines, at);
  if (listItem.test(line)) return listAt(lines, at);
  const end = endOf(lines, at, (one) => one.trim() !== "" && !/^(#|```|\|)/.test(one) && !listItem.test(one));
  return { block: { is: "paragraph", text: lines.slice(at, end).map(trimmed).join(" ") }, next: end };
}

const trimmed = (line: string): string => line.trim();

function endOf(lines: readonly string[], at: number, goesOn: (line: string) => boolean): number {
  const found = lines.findIndex((line, index) => index > at && !goesOn(line));
  return found < 0 ? lines.length : found;
}

function codeAt(lines: readonly string[], at: number): Taken {
  const end = endOf(lines, at, (line) => !line.startsWith("```"));
  return { block: { is: "code", text: lines.slice(at + 1, end).join("\n") }, next: end + 1 };
}

function tableAt(lines: readonly string[], at: number): Taken {
  const end = endOf(lines, at, isTableRow);
  const [head = [], ...rows] = lines.slice(at, end).map(cellsOf);
  const isRule = (cells: readonly string[]) => cells.every((cell) => /^:?-+:?$/.test(cell));
  return { block: { is: "table", head, rows: rows.filter((cells) => !isRule(cells)) }, next: end };
}

function listAt(lines: readonly string[], at: number): Taken {
  const end = endOf(lines, at, (line) => listItem.test(line) || /^\s+\S/.test(line));
  const items: string[] = [];
  for (const line of lines.slice(at, end)) {
    if (listItem.test(line)) items.push(line.replace(listItem, ""));
    else items.push(`${items.pop() ?? ""} ${line.trim()}`);
  }
  return { block: { is: "list", ordered: /^\s*\d/.test(lines[at] ?? ""), items }, next: end };
}

const span = /\*\*(.+?)\*\*|`([^`]+)`|\[([^\]]+)\]\(([^)]+)\)|(?<![\w*])[*_]([^*_]+)[*_](?![\w*])/g;

/** The pieces of a line. */
export function spansOf(line: string): readonly Span[] {
  const spans: Span[] = [];
  let from = 0;
  for (const found of line.matchAll(span)) {
    if (found.index > from) spans.push({ is: "text", text: line.slice(from, found.index) });
    const [whole, strong, code, link, href, emphasis] = found;
    if (strong !== undefined) spans.push({ is: "strong", text: strong });
    else if (code !== undefined) spans.push({ is: "code", text: code });
    else if (link !== undefined) spans.push({ is: "link", text: link, href: href ?? "" });
    else spans.push({ is: "emphasis", text: emphasis ?? whole });
    from = found.index + whole.length;
  }
  if (from < line.length) spans.push({ is: "text", text: line.slice(from) });
  return spans;
}
