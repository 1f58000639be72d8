import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { z } from "zod";
import { samplePiece } from "../../../../test/sample-removal.ts";
import { type Part, type PartKind, partTypes } from "../../../record/parts.ts";
import { piecesOf } from "../../../record/pieces.ts";
import { EditPart } from "../../parts/fields/editing.tsx";
import { DraftBook } from "../../record/draft-book.ts";
import { conflictLabels } from "./conflict-labels.ts";
import { MishapForm } from "./forms/mishap-form.tsx";
import { type Mishap, withKind } from "./mishap/with-kind.ts";
import { newBodies } from "./new-bodies.ts";
import { RemovalPage } from "./removal/removal-page.tsx";

const day = "2026-01-02";
const book = new DraftBook({ put: () => new Promise(() => undefined) });

function shownText(page: ReactNode): string {
  const html = renderToStaticMarkup(
    <Router ssrPath="/">
      <QueryClientProvider client={new QueryClient()}>{page}</QueryClientProvider>
    </Router>,
  );
  return html.replace(/<[^>]+>/g, " ").replaceAll("&#x27;", "'");
}

function mishapText(): string {
  const told = { on: day, by: "both", said: "s", agreed: "" };
  const instrument = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" };
  const separated = withKind(newBodies.mishap(day) as Mishap, "separatedInstrument");
  const body = { ...separated, instrument, toldPatient: "told", told };
  const part = { id: "mishap-p", kind: "mishap", revision: 1, body } as Part;
  return shownText(
    <EditPart part={part} title="Mishap" draft={undefined} book={book}>
      <MishapForm />
    </EditPart>,
  );
}

function removalText(): string {
  const parts = samplePiece({
    stopRules: { setAt: `${day}T09:00:00Z`, minutes: 20 },
    attempts: [{ at: `${day}T09:10:00Z`, minutes: 5, tool: "loop", tip: "", moved: "nothing", note: "" }],
    result: { is: "left", on: day, because: "" },
    wallsConfirmed: true,
    thinnestAlong: [{ atMm: 5, side: "furcation", mm: 1 }],
  });
  const [piece] = piecesOf(parts);
  if (piece === undefined) throw new Error("no piece");
  const nothing = () => undefined;
  return shownText(
    <RemovalPage {...{ caseId: "c", piece, parts, ledger: [], day, book }} noteAnatomy={nothing} takeOut={nothing} />,
  );
}

/** Where a page has no word of its own for a place. */
const ours = ["mishap.fragmentMm", "mishap.separated", "mishap.instrument", "removal.mishap", "removal.running"];

describe("what a conflict calls the places of a part", () => {
  it.each([
    ["mishap", mishapText],
    ["removal", removalText],
  ] as const)("of a %s is what its page calls them", (kind, page) => {
    const text = page();
    const labels = Object.entries(conflictLabels[kind] ?? {}).filter(([place]) => !ours.includes(`${kind}.${place}`));
    expect(labels.length).toBeGreaterThan(15);
    expect(labels.filter(([, label]) => !text.includes(label))).toEqual([]);
  });

  it("is of places that the form of the part has, and of every one on its first level", () => {
    for (const [kind, labels] of Object.entries(conflictLabels)) {
      const schema = partTypes[kind as PartKind].body;
      expect(Object.keys(labels).filter((place) => !hasPlace(schema, place))).toEqual([]);
    }
    const removal = Object.keys(partTypes.removal.body.shape);
    expect(removal.filter((name) => conflictLabels.removal?.[name] === undefined)).toEqual([]);
  });
});

/** Whether a form has a field at a place; a row of a list has no name of its own in it. */
function hasPlace(schema: z.ZodType, place: string): boolean {
  if (place === "") return true;
  if (schema instanceof z.ZodOptional) return hasPlace(schema.unwrap() as z.ZodType, place);
  if (schema instanceof z.ZodArray) return hasPlace(schema.element as z.ZodType, place);
  const [name = "", ...rest] = place.split(".");
  const inner = schema instanceof z.ZodObject ? (schema.shape[name] as z.ZodType | undefined) : undefined;
  return inner !== undefined && hasPlace(inner, rest.join("."));
}
