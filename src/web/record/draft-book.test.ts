import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Operation } from "../../record/change.ts";
import type { Part } from "../../record/parts.ts";
import type { CaseView } from "../../server/api.ts";
import { Refused } from "./api.ts";
import { DraftBook, gestureWords } from "./draft-book.ts";

const part = { id: "plan-a", kind: "plan", revision: 3, body: { because: "" } } as unknown as Part;
const written = { part, title: "Plan" };
const because = (text: string) => () => ({ because: text });

function bookWith(put: (words: string, operations: readonly Operation[]) => Promise<CaseView>) {
  const gestures: string[] = [];
  const book = new DraftBook({
    put: (words, operations) => {
      gestures.push(words);
      return put(words, operations);
    },
  });
  return { book, gestures };
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe("drafts", () => {
  it("become a gesture after two idle seconds, not before", () => {
    const { book, gestures } = bookWith(async () => ({}) as CaseView);
    book.write(written, because("a"), "because: a");
    vi.advanceTimersByTime(1_500);
    book.write(written, because("ab"), "because: ab");
    vi.advanceTimersByTime(1_900);
    expect(gestures).toEqual([]);
    expect(book.pending).toBe(true);
    vi.advanceTimersByTime(200);
    expect(gestures).toEqual(["Plan: because ab"]);
    expect(book.pending).toBe(false);
  });

  it("become a gesture at once when the person leaves, and go once it is recorded", async () => {
    const { book, gestures } = bookWith(async () => ({}) as CaseView);
    book.write(written, because("a"), "because: a");
    book.commit("plan-a");
    book.commit("plan-a");
    expect(gestures).toHaveLength(1);
    expect(book.of("plan-a")?.body).toEqual({ because: "a" });
    await vi.advanceTimersByTimeAsync(0);
    expect(book.of("plan-a")).toBeUndefined();
  });

  it("keep what was refused, with the faults at their places", async () => {
    const fault = { path: "options[1].forIt", says: "too long" };
    const { book } = bookWith(async () => {
      throw new Refused("input.invalid", "Cannot record plan", {}, [fault]);
    });
    book.write(written, because("bad"), "because: bad");
    book.commit("plan-a");
    await vi.advanceTimersByTimeAsync(0);
    expect(book.of("plan-a")).toMatchObject({
      body: { because: "bad" },
      faults: [{ path: "options.1.forIt", says: "too long" }],
    });
  });

  it("give way where the person let the other version stand", async () => {
    const { book } = bookWith(async () => {
      throw new Refused("record.conflict", "The other version stands.");
    });
    book.write(written, because("mine"), "because: mine");
    book.commit("plan-a");
    await vi.advanceTimersByTimeAsync(0);
    expect(book.of("plan-a")).toBeUndefined();
  });

  it("keep what is typed while an earlier gesture is on its way", async () => {
    let recorded: (view: CaseView) => void = () => undefined;
    const { book } = bookWith(() => new Promise((done) => (recorded = done)));
    book.write(written, because("a"), "because: a");
    book.commit("plan-a");
    book.write(written, because("ab"), "because: ab");
    recorded({} as CaseView);
    await vi.advanceTimersByTimeAsync(0);
    expect(book.of("plan-a")?.body).toEqual({ because: "ab" });
  });
});

describe("the words of a gesture", () => {
  it("name the page and what was done", () => {
    expect(gestureWords("Findings", ["cold of 26: none"])).toBe("Findings: cold of 26 none");
    expect(gestureWords("Findings", ["cold of 26: none", "bite of 26: painful"])).toBe(
      "Findings: cold of 26 none; bite of 26 painful",
    );
  });

  it("stay within what the record takes", () => {
    const long = "x".repeat(300);
    expect(gestureWords("Visit 1", [`told: ${long}`]).length).toBeLessThanOrEqual(200);
    const many = gestureWords(
      "Visit 1",
      Array.from({ length: 30 }, (_, index) => `field number ${index}: something`),
    );
    expect(many.length).toBeLessThanOrEqual(200);
    expect(many).toMatch(/and 29 more$/);
  });
});
