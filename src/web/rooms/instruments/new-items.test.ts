import { describe, expect, it } from "vitest";
import { fileItem, instrumentItem } from "../../../record/cabinet/cabinet-for-tests.ts";
import { cabinetKinds } from "../../../record/cabinet/cabinet-item.ts";
import { newItemBody } from "./new-items.ts";

const [scout, shaper] = [instrumentItem("scout"), instrumentItem("shaper")];
const on = "2026-03-02";

describe("a new item", () => {
  it("is taken by its form", () => {
    for (const kind of ["instrument", "file", "sequence", "template"] as const)
      expect(cabinetKinds[kind].safeParse(newItemBody(kind, [scout], { on, of: "scout" })).success, kind).toBe(true);
  });

  it("is of the instrument that is looked at, of that of the file, and never of another", () => {
    const items = [scout, shaper, fileItem("f-1", "shaper")];
    expect(newItemBody("file", items, { on, of: "shaper" })).toMatchObject({ instrument: "shaper", since: on });
    expect(newItemBody("file", items, { on, of: "f-1" })).toMatchObject({ instrument: "shaper" });
    expect(newItemBody("sequence", items, { on, of: "scout" })).toMatchObject({ steps: [{ instrument: "scout" }] });
    for (const kind of ["file", "sequence"] as const)
      for (const of of [undefined, "", "elsewhere"]) expect(newItemBody(kind, items, { on, of })).toBeUndefined();
  });

  it("of a template has no step and names nothing; a material is asked for", () => {
    expect(newItemBody("template", [], { on })).toEqual({ name: "Template 1", steps: [], stock: [] });
    expect(newItemBody("stock", [scout], { on, of: "scout" })).toBeUndefined();
  });

  it("of a file or a sequence needs an instrument", () => {
    expect(newItemBody("file", [], { on })).toBeUndefined();
    expect(newItemBody("sequence", [fileItem("f-1", "gone")], { on })).toBeUndefined();
  });

  it("of a file takes the first number that is free", () => {
    const named = (label: string) => ({
      ...fileItem(label, "scout"),
      body: { ...fileItem(label, "scout").body, label },
    });
    expect(newItemBody("file", [scout, named("File 1"), named("File 3")], { on, of: "scout" })).toMatchObject({
      label: "File 2",
    });
  });
});
