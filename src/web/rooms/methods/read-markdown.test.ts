import { describe, expect, it } from "vitest";
import { readMarkdown, spansOf } from "./read-markdown.ts";

describe("method pages", () => {
  it("are read block by block", () => {
    const text =
      "# One\n\nTwo lines\nof one paragraph.\n\n- a\n- b\n  goes on\n\n| r | w |\n| --- | --- |\n| C1 | x \\| y |\n\n```json input\n{ }\n```\n1. first\n";
    expect(readMarkdown(text)).toEqual([
      { is: "heading", level: 1, text: "One" },
      { is: "paragraph", text: "Two lines of one paragraph." },
      { is: "list", ordered: false, items: ["a", "b goes on"] },
      { is: "table", head: ["r", "w"], rows: [["C1", "x | y"]] },
      { is: "code", text: "{ }" },
      { is: "list", ordered: true, items: ["first"] },
    ]);
  });

  it("have lines of plain, strong, emphasised, code and linked words", () => {
    expect(spansOf("a **b** `c_d` [e](f.md) *g* 2*3*4")).toEqual([
      { is: "text", text: "a " },
      { is: "strong", text: "b" },
      { is: "text", text: " " },
      { is: "code", text: "c_d" },
      { is: "text", text: " " },
      { is: "link", text: "e", href: "f.md" },
      { is: "text", text: " " },
      { is: "emphasis", text: "g" },
      { is: "text", text: " 2*3*4" },
    ]);
  });

  it("end even when a fence is not closed", () => {
    expect(readMarkdown("```\nopen")).toEqual([{ is: "code", text: "open" }]);
    expect(readMarkdown("")).toEqual([]);
  });
});
