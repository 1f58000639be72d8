import { describe, expect, it } from "vitest";
import { keysOf } from "./shortcuts.ts";

const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

describe("keys", () => {
  it.each([
    [{ ...none, key: "n" }, "n"],
    [{ ...none, key: "?", shiftKey: true }, "?"],
    [{ ...none, key: "z", ctrlKey: true }, "Control+z"],
    [{ ...none, key: "z", metaKey: true }, "Control+z"],
    [{ ...none, key: "Z", ctrlKey: true, shiftKey: true }, "Control+Shift+z"],
    [{ ...none, key: "ArrowUp", altKey: true }, "Alt+ArrowUp"],
  ])("%j is %s", (event, keys) => {
    expect(keysOf(event)).toBe(keys);
  });
});
