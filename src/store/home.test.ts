import { resolve } from "node:path";
import { expect, test } from "vitest";
import { homeFolder } from "./home.ts";

const linux = { platform: "linux", userHome: "/home/r" } as const;

test("CANALOG_HOME wins on every system, blanks do not count", () => {
  for (const platform of ["linux", "darwin", "win32"] as const)
    expect(homeFolder({ CANALOG_HOME: "/data/teeth" }, { platform, userHome: "/home/r" })).toBe("/data/teeth");
  expect(homeFolder({ CANALOG_HOME: "teeth" }, linux)).toBe(resolve("teeth"));
  expect(homeFolder({ CANALOG_HOME: "  " }, linux)).toBe("/home/r/.local/share/canalog");
});

// XDG Base Directory Specification 0.8: default $HOME/.local/share; a relative path is ignored (from memory).
test("Linux: the data folder of the person", () => {
  expect(homeFolder({}, linux)).toBe("/home/r/.local/share/canalog");
  expect(homeFolder({ XDG_DATA_HOME: "/big" }, linux)).toBe("/big/canalog");
  expect(homeFolder({ XDG_DATA_HOME: "big" }, linux)).toBe("/home/r/.local/share/canalog");
});

test("macOS and Windows: where programs keep a person's data", () => {
  expect(homeFolder({}, { platform: "darwin", userHome: "/Users/r" })).toBe(
    "/Users/r/Library/Application Support/Canalog",
  );
  const windows = { platform: "win32", userHome: "/u/r" } as const;
  expect(homeFolder({ LOCALAPPDATA: "/u/r/Local" }, windows)).toBe("/u/r/Local/Canalog");
  expect(homeFolder({}, windows)).toBe("/u/r/AppData/Local/Canalog");
});
