import type { FileChooser, Locator, Page } from "playwright-core";
import type { BroughtFilm, Hand } from "./hand.ts";
import { filmOnBox } from "./hand.ts";
import type { FilmSpot } from "./incisor-films.ts";

/** A hand that has no mouse: Tab, arrows, Enter, Space, letters. */
export function byKeyboard(page: Page): Hand {
  const key = (name: string) => page.keyboard.press(name);
  const press = async (target: Locator): Promise<void> => {
    await reach(page, target);
    await key("Enter");
  };
  /** The crosshair, which starts in the middle of the film; told from one mark to the next within a tool. */
  let crosshair: FilmSpot = [0, 0];
  const goTo = async (spot: FilmSpot): Promise<void> => {
    await steps(page, spot[0] - crosshair[0], "ArrowRight", "ArrowLeft");
    await steps(page, spot[1] - crosshair[1], "ArrowDown", "ArrowUp");
    crosshair = spot;
  };
  const takeTool = async (letter: string): Promise<void> => {
    await reach(page, filmOnBox(page));
    await key(letter);
    // The first Space only shows where the crosshair stands: in the middle.
    await key("Space");
    crosshair = await middleOfFilm(page);
  };
  return {
    page,
    press,
    write: async (field, text) => {
      await reach(page, field);
      await key("Control+a");
      await page.keyboard.insertText(text);
      await key("Tab");
    },
    writeDay: async (field, day) => {
      await reach(page, field);
      const [year = "", month = "", date = ""] = day.split("-");
      // A day field takes its parts in the order of the window's language: month, day, year.
      await page.keyboard.type(month + date + year);
      await key("Tab");
    },
    choose: async (list, answer) => {
      await reach(page, list);
      // The first letter goes through the answers that begin with it.
      for (let press = 0; press < 6; press += 1) {
        if ((await list.evaluate(answerOf)) === answer) return;
        await key(answer.charAt(0));
      }
      throw new Error(`${list} does not come to "${answer}"`);
    },
    pick: async (answer) => {
      await reachRadio(page, answer);
    },
    addMoment: async (kind) => {
      await page.keyboard.press("Escape");
      await leaveFields(page);
      await key("a");
      await page.getByRole("menu", { name: "Add a moment" }).waitFor();
      await page.keyboard.type(kind.slice(0, 3));
      const item = page.getByRole("menuitem", { name: kind });
      await item.and(page.locator(":focus")).waitFor();
      await key("Enter");
      // What was added is gone to: its heading has the focus.
      await page.locator("#moment-title:focus").waitFor();
    },
    openLightBox: () => press(page.getByRole("link", { name: "Light box" })),
    bringFilm: (film) => bring(page, film),
    markKnown: async ({ from, to, lengthMm }) => {
      await takeTool("k");
      await goTo(from);
      await key("Space");
      await goTo(to);
      await key("Space");
      const asking = page.getByRole("dialog", { name: "How long is it?" });
      await asking.getByLabel("Length in mm").and(page.locator(":focus")).waitFor();
      await page.keyboard.insertText(String(lengthMm));
      await key("Enter");
      await asking.waitFor({ state: "detached" });
    },
    trace: async (anchors, canal) => {
      await takeTool("t");
      for (const [index, spot] of anchors.entries()) {
        await goTo(spot);
        await key(index === anchors.length - 1 ? "Enter" : "Space");
      }
      const asking = page.getByRole("dialog", { name: "Which canal is this?" });
      await asking
        .getByRole("button", { name: new RegExp(`^${canal}\\b`) })
        .and(page.locator(":focus"))
        .waitFor();
      await key("1");
      await asking.waitFor({ state: "detached" });
    },
    moveAnchor: async (from, to, index) => {
      await reach(page, filmOnBox(page));
      for (let handle = 0; handle <= index; handle += 1) await key("n");
      await key("Space");
      crosshair = from;
      await goTo(to);
      await key("Space");
    },
    undo: () => key("Control+z"),
    redo: () => key("Control+Shift+z"),
  };
}

/** The words of the answer that a list shows. */
const answerOf = (element: Element): string =>
  element instanceof HTMLSelectElement ? (element.selectedOptions[0]?.text ?? "") : "";

/** Walks with Tab until a thing has the focus. */
async function reach(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let step = 0; step < 250; step += 1) {
    if (await hasFocus(target)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${target} can't be reached with Tab`);
}

/** Reaches a group of answers with Tab and one of them with arrows; a radio in a group is chosen as it gets the focus. */
async function reachRadio(page: Page, answer: Locator): Promise<void> {
  await answer.waitFor();
  for (let step = 0; step < 250; step += 1) {
    if (await answer.evaluate(isInFocusedGroup)) break;
    await page.keyboard.press("Tab");
  }
  for (let step = 0; step < 20; step += 1) {
    if (await answer.isChecked()) return;
    await page.keyboard.press((await hasFocus(answer)) ? "Space" : "ArrowDown");
  }
  throw new Error(`${answer} can't be chosen with arrows`);
}

/** Whether the focus is on this answer or on another of the same group. */
const isInFocusedGroup = (element: Element): boolean => {
  const focused = document.activeElement;
  return (
    element instanceof HTMLInputElement &&
    focused instanceof HTMLInputElement &&
    focused.type === "radio" &&
    focused.name === element.name
  );
};

const hasFocus = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);

/** Walks on with Tab out of any field that takes letters for itself. */
async function leaveFields(page: Page): Promise<void> {
  for (let step = 0; step < 250; step += 1) {
    const isField = await page.evaluate(() => {
      const focused = document.activeElement;
      const takesText = focused instanceof HTMLInputElement && !["checkbox", "radio", "button"].includes(focused.type);
      return takesText || focused instanceof HTMLSelectElement || focused instanceof HTMLTextAreaElement;
    });
    if (!isField) return;
    await page.keyboard.press("Tab");
  }
}

/** A way along one axis in presses of ten pixels and of one. */
async function steps(page: Page, by: number, ahead: string, back: string): Promise<void> {
  const arrow = by > 0 ? ahead : back;
  const pixels = Math.round(Math.abs(by));
  for (let ten = 0; ten < Math.floor(pixels / 10); ten += 1) await page.keyboard.press(`Shift+${arrow}`);
  for (let one = 0; one < pixels % 10; one += 1) await page.keyboard.press(arrow);
}

/** The middle of the film on the box, in its own pixels: what lies in the middle of its pane while it is shown whole. */
async function middleOfFilm(page: Page): Promise<FilmSpot> {
  const size = await page.getByRole("region", { name: "This film" }).textContent();
  const [, columns = "0", rows = "0"] = /(\d+) by (\d+) pixels/.exec(size ?? "") ?? [];
  return [(Number(columns) - 1) / 2, (Number(rows) - 1) / 2];
}

/** A picture comes from the clipboard, where a mouse would drop it; any other file by the key that opens one. */
async function bring(page: Page, { name, mediaType, bytes, by }: BroughtFilm): Promise<void> {
  if (by !== "button" && mediaType === "image/png") {
    await page.evaluate(async (text) => {
      const content = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      await navigator.clipboard.write([new ClipboardItem({ "image/png": new Blob([content], { type: "image/png" }) })]);
    }, Buffer.from(bytes).toString("base64"));
    await page.keyboard.press("Control+v");
    return;
  }
  const chooser = await openFile(page);
  await chooser.setFiles({ name, mimeType: mediaType, buffer: Buffer.from(bytes) });
}

/** Presses the key again where the room was drawn but did not listen yet. */
async function openFile(page: Page): Promise<FileChooser> {
  for (let press = 0; press < 10; press += 1) {
    const chosen = page.waitForEvent("filechooser", { timeout: 2_000 }).catch(() => undefined);
    await page.keyboard.press("f");
    const chooser = await chosen;
    if (chooser !== undefined) return chooser;
  }
  throw new Error("F opens no file");
}
