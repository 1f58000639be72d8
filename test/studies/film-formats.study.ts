import { writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { filmFormatsTable, formatsPage, pageWith, tableInPage } from "./film-formats-study.ts";

it("writes the table of film formats", async () => {
  const table = await filmFormatsTable();
  writeFileSync(formatsPage, pageWith(table));
  expect(tableInPage()).toBe(table);
});
