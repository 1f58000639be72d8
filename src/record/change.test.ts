import { expect, test } from "vitest";
import { consentBody, newCase, put, remove } from "../../test/samples/gestures.ts";
import { apply, follows, gestureSchema, inverseOf, noHash, patchesOf, seal, stateHash } from "./change.ts";
import { advance, beforeFirst, replay } from "./standing.ts";

const said = { at: "2026-03-01T09:30:00Z", who: "A. Writer" };
const first = advance(beforeFirst("case-1"), { ...said, words: "Case made", patches: patchesOf(newCase(), []) });
const consent = put("consent-1", "consent", 0, consentBody("2026-02-11"));
const second = advance(first.standing, {
  ...said,
  words: "Consent",
  patches: patchesOf(consent, first.standing.parts),
});
const { parts } = second.standing;

test("a gesture has words and at least one operation", () => {
  expect(gestureSchema.safeParse(newCase()).success).toBe(true);
  expect(gestureSchema.safeParse({ words: " ", operations: newCase().operations }).success).toBe(false);
  expect(gestureSchema.safeParse({ words: "Nothing", operations: [] }).success).toBe(false);
});

test("patches hold a part before and after; what does not change makes none", () => {
  const changed = { ...consentBody("2026-02-12") };
  expect(patchesOf(put("consent-1", "consent", 1, changed), parts)).toMatchObject([
    { id: "consent-1", kind: "consent", version: 1, before: { on: "2026-02-11" }, after: { on: "2026-02-12" } },
  ]);
  expect(patchesOf(put("consent-1", "consent", 1, consentBody("2026-02-11")), parts)).toEqual([]);
  expect(patchesOf(remove("consent-1", "consent", 1), parts)).toMatchObject([{ after: null }]);
});

test("a part that changed since it was seen is a conflict with both versions", () => {
  const stale = put("consent-1", "consent", 0, consentBody("2026-02-20"));
  expect(() => patchesOf(stale, parts)).toThrow(
    expect.objectContaining({
      code: "record.conflict",
      facts: {
        conflicts: [{ id: "consent-1", kind: "consent", yours: consentBody("2026-02-20"), theirs: parts[1] }],
      },
    }),
  );
  expect(() => patchesOf(remove("consent-9", "consent", 2), parts)).toThrow(
    expect.objectContaining({
      code: "record.conflict",
      facts: { conflicts: [{ id: "consent-9", kind: "consent", yours: null, theirs: null }] },
    }),
  );
});

const two = { words: "Twice", operations: [...consent.operations, ...consent.operations] };
test.each([
  ["a kind that is none", put("thing-1", "thing" as "case", 0, {}), "input.invalid"],
  ["a body that does not fit", put("consent-2", "consent", 0, { on: "never" }), "input.invalid"],
  ["a second part of a kind that stands once", put("about-2", "case", 0, newBody()), "input.impossible"],
  ["another kind under the same id", put("consent-1", "case", 1, newBody()), "input.impossible"],
  ["a part that is touched twice", two, "input.impossible"],
  ["taking away what the case is about", remove("about", "case", 1), "input.impossible"],
])("%s is refused", (_, gesture, code) => {
  expect(() => patchesOf(gesture, parts)).toThrow(expect.objectContaining({ code }));
});

function newBody(): unknown {
  const [operation] = newCase().operations;
  return operation?.op === "put" ? operation.body : undefined;
}

test("a link follows the one before it, and any change in it breaks it", () => {
  expect(follows(first.change, noHash)).toBe(true);
  expect(follows(second.change, first.change.hash)).toBe(true);
  expect(follows(second.change, noHash)).toBe(false);
  for (const turned of [
    { words: "Other" },
    { who: "B" },
    { at: "2026-03-01T09:30:01Z" },
    { sequence: 3 },
    { patches: [] },
  ])
    expect(follows({ ...second.change, ...turned }, first.change.hash)).toBe(false);
  const { hash, ...content } = second.change;
  expect(seal(content).hash).toBe(hash);
});

test("the inverse of patches brings the state back, and a part counts on", () => {
  const back = apply(parts, inverseOf(second.change.patches), second.standing.revisions);
  expect(stateHash(back)).toBe(stateHash(first.standing.parts));
  expect(stateHash(back)).not.toBe(stateHash(parts));
  expect(apply([], first.change.patches, new Map([["about", 4]]))).toMatchObject([{ revision: 5 }]);
});

test("a state's hash does not depend on the order of the parts or on their counts", () => {
  const turned = [...parts].reverse().map((part) => ({ ...part, revision: part.revision + 3 }));
  expect(stateHash(turned)).toBe(stateHash(parts));
});

test("replay gives where the case stands, and names the first link that does not hold", () => {
  expect(replay("case-1", [first.change, second.change])).toEqual(second.standing);
  expect(replay("case-1", [])).toEqual(beforeFirst("case-1"));
  const broken = (changes: Parameters<typeof replay>[1], sequence: number, caseId = "case-1") =>
    expect(() => replay(caseId, changes)).toThrow(
      expect.objectContaining({ code: "store.brokenChain", facts: { caseId, sequence } }),
    );
  broken([second.change], 2);
  broken([first.change, { ...second.change, words: "Other" }], 2);
  broken([first.change, first.change], 1);
  broken([first.change], 1, "case-2");
});
