import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CanalRoot } from "../core/tooth/canal-root.ts";
import { teeth } from "../core/tooth/teeth.ts";
import { usualRoots } from "../core/tooth/usual-roots.ts";
import { type CanalState, canalStates } from "./canal-state.ts";
import { allNodes, expectClear, labelsIn, shapesIn, toothNamed } from "./drawn-for-tests.ts";
import { emblem } from "./emblem.ts";
import { canalsOf } from "./emblem-input.ts";
import { orificePlaces } from "./orifice-places.ts";
import { svgText } from "./svg-text.ts";
import type { Figure } from "./svg-tree.ts";
import { boxesMeet } from "./text-label.ts";
import { themes } from "./theme.ts";
import { mesialIsRight } from "./tooth-outline.ts";

const stateOf = (state: CanalState["state"]): CanalState =>
  state === "blocked" ? { state, with: "ledge", at: 0.5 } : { state };
const awaited: CanalState = { state: "notFound", looked: false };
const allStates: readonly CanalState[] = [...canalStates.map(stateOf), awaited];
const drawn = (twoDigit: string, roots: readonly CanalRoot[], states: Record<string, CanalState>, widthPx: number) =>
  emblem({ tooth: toothNamed(twoDigit), roots, states, theme: "paper", widthPx });

function expectClearOfDrawing(figure: Figure): void {
  expectClear(figure);
  for (const label of labelsIn(figure))
    for (const shape of shapesIn(figure)) expect(boxesMeet(label, shape), `${label.text} on a drawing`).toBe(false);
}

const names = ["MB", "DB", "P", "M", "D", "DL", "ML", "RE", "Palatal"];
const rootsOfAnyTooth = fc
  .tuple(
    fc.shuffledSubarray(names, { minLength: 1, maxLength: 4 }),
    fc.array(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 4 }), { minLength: 4, maxLength: 4 }),
  )
  .map(([chosen, levels]): CanalRoot[] => chosen.map((name, at) => ({ name, levels: levels[at] ?? [1] })));

describe("emblem", () => {
  it.each([24, 200, 900])(
    "of every one of the 52 teeth at %i px: no word on a word, on a drawing, or outside",
    (widthPx) => {
      for (const { twoDigit } of teeth) expectClearOfDrawing(drawn(twoDigit, usualRoots(twoDigit).roots, {}, widthPx));
    },
  );

  it("of any roots and states keeps its words apart", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...teeth),
        rootsOfAnyTooth,
        fc.array(fc.constantFrom(...allStates), { minLength: 12, maxLength: 12 }),
        fc.constantFrom(24, 200, 900),
        (tooth, roots, chosen, widthPx) => {
          const canals = canalsOf({ tooth, roots, states: {} });
          const states = Object.fromEntries(canals.map((canal, at) => [canal, chosen[at] ?? stateOf("filled")]));
          expectClearOfDrawing(emblem({ tooth, roots, states, theme: "dark", widthPx }));
        },
      ),
      { numRuns: 120 },
    );
  });

  it("says in words the tooth, the courses and every canal's state, a missing one as not found", () => {
    const figure = drawn(
      "26",
      usualRoots("26").roots,
      { MB1: { state: "blocked", with: "post" }, P: { state: "filled" } },
      24,
    );
    expect(figure.alternative).toContain("Tooth 26, upper left first molar");
    expect(figure.alternative).toContain("MB 2-1, DB 1, P 1");
    expect(figure.alternative).toContain("MB1 blocked: post; MB2 not found; DB not found; P filled");
  });

  it("writes the state of every canal out on the large form", () => {
    const texts = labelsIn(drawn("11", usualRoots("11").roots, { Single: { state: "medicated" } }, 900)).map(
      ({ text }) => text,
    );
    expect(texts).toContain("medicated");
  });

  it.each([24, 200, 900])("tells every state apart without any colour at %i px", (widthPx) => {
    const uncoloured = allStates.map((state) => {
      const figure = drawn("11", usualRoots("11").roots, { Single: state }, widthPx);
      const text = JSON.stringify(figure.tree).replace(/"(fill|stroke|data-state)":"[^"]*"/g, "");
      return text.replace(/"[a-z: ]+"\]\}/g, "");
    });
    expect(new Set(uncoloured).size).toBe(allStates.length);
  });

  it.each([24, 200, 900])("asks nobody to look at a canal that nobody has looked for yet at %i px", (widthPx) => {
    const cShaped: CanalRoot[] = [{ name: "R", levels: [{ canals: 1, cShape: "C1" }, 1], orifices: ["C"] }];
    const single = (state: CanalState) => drawn("11", usualRoots("11").roots, { Single: state }, widthPx);
    const ribbon = (state: CanalState) => drawn("47", cShaped, { C: state }, widthPx);
    for (const figure of [single, ribbon]) {
      expect(svgText(figure(awaited))).not.toContain(themes.paper.accent);
      expect(svgText(figure({ state: "notFound" }))).toContain(themes.paper.accent);
    }
    expect(single(awaited).alternative).toContain("Canals: Single not looked for yet.");
    expect(single({ state: "notFound" }).alternative).toContain("Canals: Single not found.");
  });

  it("writes out that a canal was not looked for yet, on the large form and quietly", () => {
    const figure = drawn("11", usualRoots("11").roots, { Single: awaited }, 900);
    expect(labelsIn(figure).map(({ text }) => text)).toContain("not looked for yet");
    const words = allNodes(figure.tree).find(({ node }) => node.children[0] === "not looked for yet");
    expect(words?.node.attributes.fill).toBe(themes.paper.quiet);
  });

  it("is the same text for the same tooth, and another for another state", () => {
    const roots = usualRoots("46").roots;
    const text = (state: CanalState) => svgText(drawn("46", roots, { D: state }, 900));
    expect(text({ state: "filled" })).toBe(text({ state: "filled" }));
    expect(text({ state: "filled" })).not.toBe(text({ state: "shaped" }));
  });

  it("draws a C-shaped section as a ribbon, and each of its parts in its own state", () => {
    const roots: CanalRoot[] = [{ name: "R", levels: [{ canals: 2, cShape: "C2" }, 1], orifices: ["MBC", "DC"] }];
    const figure = drawn("37", roots, { MBC: { state: "filled" }, DC: { state: "located" } }, 900);
    expect(figure.alternative).toContain("C-shaped (C2)");
    const orifices = allNodes(figure.tree).filter(({ node }) => node.attributes["data-part"] === "orifice");
    expect(orifices.map(({ node }) => node.attributes["data-state"]).slice(0, 2)).toEqual(["filled", "located"]);
    expectClearOfDrawing(figure);
  });

  it("shows the form of each level beside a lone C-shaped root, and says it", () => {
    const levels: CanalRoot["levels"] = [
      { canals: 1, cShape: "C1" },
      { canals: 2, cShape: "C3" },
      { canals: 1, cShape: "C4" },
    ];
    const lone = drawn("47", [{ name: "R", levels, orifices: ["C"] }], {}, 900);
    expectClearOfDrawing(lone);
    const texts = labelsIn(lone).map(({ text }) => text);
    expect(texts.filter((text) => /^C\d$/.test(text))).toEqual(["C1", "C3", "C4"]);
    expect(lone.alternative).toContain("from orifice to foramen C1, C3, C4");
    const plain = drawn("47", usualRoots("47").roots, {}, 900);
    expect(labelsIn(plain).some(({ text }) => /^C\d$/.test(text))).toBe(false);
  });
});

describe("the section", () => {
  // Seen from the crown with the buccal side up: upper right and lower left teeth have their mesial side to the right.
  it.each([
    ["16", true],
    ["26", false],
    ["36", true],
    ["46", false],
    ["55", true],
    ["85", false],
  ])("of %s has its mesial side to the right: %s", (twoDigit, right) => {
    expect(mesialIsRight(toothNamed(twoDigit))).toBe(right);
  });

  it("puts each canal where its name says", () => {
    const at = (twoDigit: string, roots: readonly CanalRoot[]) =>
      Object.fromEntries(orificePlaces(toothNamed(twoDigit), roots).map(({ canal, x, y }) => [canal, { x, y }]));
    const upper = at("26", usualRoots("26").roots);
    expect(upper.MB1?.x).toBeGreaterThan(0.2);
    expect(upper.MB2?.y).toBeGreaterThan((upper.MB1?.y ?? 0) + 0.3);
    expect(upper.DB?.x).toBeLessThan(-0.2);
    expect(upper.P?.y).toBeGreaterThan(0.3);
    const extra: CanalRoot[] = [...usualRoots("46").roots, { name: "RE", side: "lingual", levels: [1] }];
    expect(at("46", extra).RE).toMatchObject({ x: expect.any(Number), y: expect.any(Number) });
    expect(at("46", extra).RE?.y).toBeGreaterThan(0.3);
    expect(at("46", extra).RE?.x).toBeLessThan(0);
  });

  it("never draws an orifice on another, whatever the roots", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...teeth),
        rootsOfAnyTooth,
        fc.constantFrom(24, 200, 900),
        (tooth, roots, widthPx) => {
          const states = Object.fromEntries(
            canalsOf({ tooth, roots, states: {} }).map((canal) => [canal, stateOf("filled")]),
          );
          const { tree } = emblem({ tooth, roots, states, theme: "print", widthPx });
          const section = allNodes(tree).find(({ node }) => node.attributes["data-part"] === "section")?.node;
          const circles = (section === undefined ? [] : allNodes(section))
            .filter(({ node }) => node.tag === "circle")
            .map(({ node }) => ({
              x: Number(node.attributes.cx),
              y: Number(node.attributes.cy),
              r: Number(node.attributes.r),
            }));
          expect(circles).toHaveLength(Object.keys(states).length);
          circles.forEach((one, at) => {
            expect(one.r).toBeGreaterThan(widthPx === 24 ? 0.3 : 1);
            for (const other of circles.slice(at + 1))
              expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(one.r + other.r);
          });
        },
      ),
    );
  });
});
