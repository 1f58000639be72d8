import { describe, expect, it, vi } from "vitest";
import type { ExerciseView } from "../../server/api.ts";
import { Refused } from "./api.ts";
import { type ExerciseAct, ExerciseQueue } from "./exercise-queue.ts";

const mark = (u: number): ExerciseAct => ({ do: "mark", mark: { at: [u, 0], by: "pointer", zoom: 1 } });
const takeBack: ExerciseAct = { do: "takeBack" };

/** A record that takes marks, fails when told so, and is asked one thing at a time. */
function world() {
  let marks: ExerciseView["marks"] = [];
  const trouble: Error[] = [];
  const sent: [string, number][] = [];
  const send = vi.fn(async (act: ExerciseAct, number: number) => {
    await Promise.resolve();
    const error = trouble.shift();
    if (error !== undefined) throw error;
    sent.push([act.do, number]);
    marks = act.do === "mark" ? [...marks, { at: act.mark.at, by: act.mark.by }] : marks.slice(0, -1);
    return { marks } as ExerciseView;
  });
  const queue = new ExerciseQueue({ send, take: () => undefined });
  return { queue, send, sent, trouble, marks: () => marks };
}
const settled = (queue: ExerciseQueue) => vi.waitFor(() => expect(queue.now().is).not.toBe("saving"));
const columns = (marks: ExerciseView["marks"]) => marks.map(({ at }) => at[0]);

describe("the acts of an exercise", () => {
  it("reach the record one at a time in order, each with the number of its mark", async () => {
    const { queue, sent, marks } = world();
    queue.put(mark(1), 0);
    queue.put(mark(2), 0);
    queue.put(takeBack, 0);
    queue.put(mark(3), 0);
    await settled(queue);
    expect(sent).toEqual([
      ["mark", 0],
      ["mark", 1],
      ["takeBack", 1],
      ["mark", 1],
    ]);
    expect(columns(marks())).toEqual([1, 3]);
  });

  it("are seen at once, before the record has them", async () => {
    const { queue } = world();
    queue.put(mark(1), 0);
    queue.put(mark(2), 0);
    expect(columns(queue.over([]))).toEqual([1, 2]);
    queue.put(takeBack, 0);
    expect(columns(queue.over([]))).toEqual([1]);
    await settled(queue);
    expect(queue.over([])).toEqual([]);
  });

  it("wait while the program can't be reached, and lose nothing", async () => {
    const { queue, trouble, marks } = world();
    trouble.push(new Refused("unreachable", "no answer"));
    queue.put(mark(1), 0);
    queue.put(mark(2), 0);
    await settled(queue);
    expect(queue.now()).toMatchObject({ is: "failed", retries: true });
    queue.put(mark(3), 0);
    queue.retry(0);
    await vi.waitFor(() => expect(columns(marks())).toEqual([1, 2, 3]));
    await vi.waitFor(() => expect(queue.now()).toEqual({ is: "quiet" }));
  });

  it("are dropped from the first that is refused on, for the later rest on it", async () => {
    const { queue, trouble, marks } = world();
    trouble.push(new Refused("record.conflict", "another window"));
    queue.put(mark(1), 0);
    queue.put(mark(2), 0);
    await settled(queue);
    expect(queue.now()).toMatchObject({ is: "failed", retries: false });
    expect(queue.over([])).toEqual([]);
    queue.put(mark(4), 0);
    await vi.waitFor(() => expect(columns(marks())).toEqual([4]));
  });

  it("tell whoever watches, until they stop", async () => {
    const { queue } = world();
    const heard = vi.fn();
    const stop = queue.watch(heard);
    queue.put(mark(1), 0);
    await settled(queue);
    const times = heard.mock.calls.length;
    expect(times).toBeGreaterThanOrEqual(2);
    stop();
    queue.put(mark(2), 1);
    await settled(queue);
    expect(heard).toHaveBeenCalledTimes(times);
  });
});
