import type { Line, PageModel } from "../src/pages/page-model.ts";

/** Every line of a document's blocks as plain text, in the order of reading. */
export function linesOfModel(model: Pick<PageModel, "pages">): string[] {
  const lineWords = (line: Line): string => line.map((run) => run.text).join("");
  return model.pages.flatMap(({ title, subtitle, blocks, notes }) => {
    const inBlocks = blocks.flatMap((block) => {
      switch (block.kind) {
        case "text":
          return [block.heading ?? "", ...block.lines.map(lineWords)];
        case "table":
          return [block.caption, ...block.columns.map(({ head }) => head), ...block.rows.flat().map(lineWords)];
        case "blanks":
          return [...(block.ticks ?? []), ...block.labels];
        case "film":
          return [lineWords(block.caption), block.alternative];
        default:
          return [block.caption, block.figure.alternative];
      }
    });
    return [title, subtitle ?? "", ...inBlocks, ...notes];
  });
}

/** Every word of a document, its title and mark as well. */
export const wordsOfModel = (model: PageModel): string => [model.title, model.mark, ...linesOfModel(model)].join("\n");

/** What stands at a path of an output, as `options[1].plain.name`. */
export const valueAtPath = (value: unknown, path: string): unknown =>
  path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>(
      (held, step) => (typeof held === "object" && held !== null ? Reflect.get(held, step) : undefined),
      value,
    );
