import type { Locator, Page } from "playwright-core";
import { type BroughtFilm, type Hand, onScreen } from "./hand.ts";
import type { FilmSpot } from "./incisor-films.ts";

/** A hand on the mouse. */
export function byPointer(page: Page): Hand {
  const press = (target: Locator) => target.click();
  const tool = (name: RegExp) => page.getByRole("navigation", { name: "Tools" }).getByRole("button", { name });
  const pressFilm = async (spot: FilmSpot, times = 1): Promise<void> => {
    const { x, y } = await onScreen(page, spot);
    await page.mouse.move(x, y, { steps: 4 });
    await page.mouse.click(x, y, { clickCount: times, delay: 20 });
  };
  return {
    page,
    press,
    write: async (field, text) => {
      await field.fill(text);
      await field.blur();
    },
    writeDay: async (field, day) => {
      await field.fill(day);
      await field.blur();
    },
    choose: async (list, answer) => {
      await list.selectOption({ label: answer });
    },
    pick: (answer) => answer.check(),
    addMoment: async (kind) => {
      await press(page.getByRole("button", { name: "Add a moment" }));
      await press(page.getByRole("menuitem", { name: kind }));
    },
    openLightBox: () => press(page.getByRole("link", { name: "Light box" })),
    bringFilm: (film) => bring(page, film),
    markKnown: async ({ from, to, lengthMm }) => {
      await press(tool(/^known/));
      await pressFilm(from);
      await pressFilm(to);
      const asking = page.getByRole("dialog", { name: "How long is it?" });
      await asking.getByLabel("Length in mm").fill(String(lengthMm));
      await press(asking.getByRole("button", { name: /^Record/ }));
    },
    trace: async (anchors, canal) => {
      await press(tool(/^trace/));
      const last = anchors.length - 1;
      for (const [index, spot] of anchors.entries()) await pressFilm(spot, index === last ? 2 : 1);
      const asking = page.getByRole("dialog", { name: "Which canal is this?" });
      await asking.waitFor();
      const offered = asking.getByRole("button", { name: new RegExp(`^${canal}\\b`) });
      if ((await offered.count()) > 0) return press(offered);
      await asking.getByLabel(/^(Another|Its) name$/).fill(canal);
      await press(asking.getByRole("button", { name: "Name it" }));
    },
    moveAnchor: async (from, to) => {
      const [start, end] = [await onScreen(page, from), await onScreen(page, to)];
      await page.mouse.move(start.x, start.y);
      await page.mouse.down();
      await page.mouse.move(end.x, end.y, { steps: 6 });
      await page.mouse.up();
    },
    undo: () => press(page.getByRole("button", { name: /^Undo/ })),
    redo: () => press(page.getByRole("button", { name: /^Redo/ })),
  };
}

async function bring(page: Page, { name, mediaType, bytes, by }: BroughtFilm): Promise<void> {
  if (by === "button") {
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page
        .getByRole("button", { name: /^(Open a film|.*drop, paste, open)/ })
        .first()
        .click(),
    ]);
    await chooser.setFiles({ name, mimeType: mediaType, buffer: Buffer.from(bytes) });
    return;
  }
  const held = await page.evaluateHandle(
    ([text, fileName, type]) => {
      const carried = new DataTransfer();
      const content = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      carried.items.add(new File([content], fileName, { type }));
      return carried;
    },
    [Buffer.from(bytes).toString("base64"), name, mediaType] as const,
  );
  if (by === "drop") {
    const place = page.getByRole("main");
    for (const event of ["dragenter", "dragover", "drop"]) await place.dispatchEvent(event, { dataTransfer: held });
    return;
  }
  await page.evaluate((carried) => {
    document.body.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: carried, bubbles: true, cancelable: true }),
    );
  }, held);
}
