import { describe, expect, it } from "vitest";
import type { Operation } from "../../record/change.ts";
import type { Part } from "../../record/parts.ts";
import type { CaseView } from "../../server/api.ts";
import { Refused } from "./api.ts";
import { SaveQueue } from "./save-queue.ts";

const put = (baseRevision: number, note: string, id = "plan-a"): Operation => ({
  ...{ op: "put", id, kind: "plan", baseRevision, body: { note } },
});
const viewWith = (revision: number, id = "plan-a") =>
  ({ parts: [{ id, kind: "plan", revision, body: {} }] }) as unknown as CaseView;
const settle = () => new Promise((done) => setTimeout(done, 0));

/** A record that answers each gesture as the test says, and remembers what it was sent. */
function world(answers: readonly (CaseView | Error)[]) {
  const sent: { words: string; operations: readonly Operation[] }[] = [];
  const later: (() => void)[] = [];
  const queue = new SaveQueue({
    send: async (words, operations) => {
      const answer = answers[sent.length];
      sent.push({ words, operations });
      if (answer === undefined || answer instanceof Error) throw answer ?? new Error("no answer");
      return answer;
    },
    take: () => undefined,
    heldIn: ({ parts }) => parts,
    now: () => new Date(2026, 0, 1, 14, 2),
    later: (work) => later.push(work),
  });
  return { queue, sent, later };
}

const conflict = new Refused("record.conflict", "Cannot record", {
  conflicts: [{ id: "plan-a", kind: "plan", yours: { note: "mine" }, theirs: { id: "plan-a", revision: 7, body: {} } }],
});

describe("the queue of gestures", () => {
  it("sends one at a time, in order, and says when it saved", async () => {
    const { queue, sent } = world([viewWith(2), viewWith(3)]);
    void queue.put("first", [put(1, "a")]);
    void queue.put("second", [put(1, "b")]);
    expect(queue.state.is).toBe("saving");
    expect(sent.map(({ words }) => words)).toEqual(["first"]);
    await settle();
    expect(sent.map(({ words }) => words)).toEqual(["first", "second"]);
    expect(queue.state).toEqual({ is: "saved", at: new Date(2026, 0, 1, 14, 2) });
    expect(queue.busy).toBe(false);
  });

  it("tells of each gesture at once, also while one before it is being sent or waits for a choice", async () => {
    const { queue } = world([viewWith(2), conflict]);
    const standing = [{ id: "plan-a", kind: "plan", revision: 1, body: { note: "at first" } }];
    const seen: unknown[] = [];
    let was = queue.state;
    queue.watch(() => {
      // As a screen does: what is told as the same state is not drawn again.
      if (queue.state !== was) seen.push(queue.over(standing)[0]?.body);
      was = queue.state;
    });
    void queue.put("first", [put(1, "a")]);
    void queue.put("second", [put(1, "b")]).catch(() => undefined);
    expect(seen).toEqual([{ note: "a" }, { note: "b" }]);
    await queue.settled();
    expect(queue.state.is).toBe("conflict");
    void queue.put("third", [put(2, "c")]);
    expect(seen.at(-1)).toEqual({ note: "c" });
  });

  it("is settled once all is recorded, and where what is left waits for the person", async () => {
    const { queue } = world([viewWith(2), viewWith(3), conflict]);
    await queue.settled();
    void queue.put("first", [put(1, "a")]);
    void queue.put("second", [put(1, "b")]);
    await queue.settled();
    expect(queue.state.is).toBe("saved");
    void queue.put("third", [put(1, "c")]).catch(() => undefined);
    await queue.settled();
    expect([queue.state.is, queue.busy]).toEqual(["conflict", true]);
  });

  it("counts its own writes as its own: the second is sent on top of the first", async () => {
    const { queue, sent } = world([viewWith(2), viewWith(3), viewWith(4)]);
    void queue.put("first", [put(1, "a")]);
    void queue.put("second", [put(1, "b")]);
    await settle();
    void queue.put("third, begun before the first was recorded", [put(1, "c")]);
    await settle();
    expect(sent.map(({ operations }) => operations[0]?.baseRevision)).toEqual([1, 2, 3]);
  });

  it("shows what waits over what is recorded", () => {
    const { queue } = world([]);
    queue.put("put", [put(1, "typed")]).catch(() => undefined);
    queue.put("new", [put(0, "new", "plan-b")]).catch(() => undefined);
    const parts = queue.over(viewWith(1).parts);
    expect(parts.map(({ id, body }) => [id, body])).toEqual([
      ["plan-a", { note: "typed" }],
      ["plan-b", { note: "new" }],
    ]);
    expect(queue.over([] as Part[])).toHaveLength(2);
  });

  it("keeps a gesture that could not be sent, and sends it again", async () => {
    const { queue, sent, later } = world([new Refused("unreachable", "Cannot reach Canalog."), viewWith(2)]);
    const recorded = queue.put("once", [put(1, "a")]);
    await settle();
    expect(queue.state).toMatchObject({ is: "failed", retries: true, words: "once" });
    later[0]?.();
    await recorded;
    expect(sent).toHaveLength(2);
    expect(queue.state.is).toBe("saved");
  });

  it("hands a refused gesture back and goes on with the next", async () => {
    const refused = new Refused("input.invalid", "Cannot record visit", {}, [
      { path: "minutes", says: "900 is too much" },
    ]);
    const { queue } = world([refused, viewWith(2)]);
    const first = queue.put("bad", [put(1, "a")]);
    const second = queue.put("good", [put(1, "b")]);
    await expect(first).rejects.toBe(refused);
    await second;
    expect(queue.state.is).toBe("saved");
  });

  it("says why a lone gesture was refused", async () => {
    const { queue } = world([new Refused("input.invalid", "x", {}, [{ path: "minutes", says: "900 is too much" }])]);
    await expect(queue.put("bad", [put(1, "a")])).rejects.toThrow();
    expect(queue.state).toEqual({ is: "failed", why: "900 is too much.", words: "bad", retries: false });
  });

  it("stops at a conflict until the person chose, and nothing behind it is lost", async () => {
    const { queue, sent } = world([conflict, viewWith(8), viewWith(9)]);
    const first = queue.put("mine", [put(1, "mine")]);
    const second = queue.put("behind", [put(1, "behind", "plan-b")]);
    await settle();
    expect(queue.state.is).toBe("conflict");
    expect(sent).toHaveLength(1);
    queue.settle([put(7, "mine")]);
    await Promise.all([first, second]);
    expect(sent.map(({ operations }) => operations[0]?.baseRevision)).toEqual([1, 7, 1]);
  });

  it("lets the other version stand if the person says so", async () => {
    const { queue } = world([conflict]);
    const first = queue.put("mine", [put(1, "mine")]);
    await settle();
    queue.settle(null);
    await expect(first).rejects.toMatchObject({ code: "record.conflict" });
    expect(queue.busy).toBe(false);
    expect(queue.state.is).toBe("quiet");
  });
});
