import { expect } from "vitest";
import { filmOnBox, type Hand, onScreen } from "./hand.ts";
import type { FilmSpot, IncisorFilm } from "./incisor-films.ts";

/** How far a followed line may lie from the middle of the canal, in pixels: half of its width in its middle third, so inside it. */
const nearPx = 12;

/**
 * Marks the orifice, moves the pointer along the canal without pressing, and holds the line between to the canal's known
 * course: it ends at the pointer wherever that goes, and it bends with the canal on the way. Leaves nothing behind.
 */
export async function lineFollowsPointer(hand: Hand, { course }: IncisorFilm): Promise<void> {
  const { page } = hand;
  await page
    .getByRole("navigation", { name: "Tools" })
    .getByRole("button", { name: /^trace/ })
    .click();
  await page.getByLabel("Looking for lines on the film").waitFor({ state: "detached" });
  const start = await onScreen(page, course[0] ?? [0, 0]);
  await page.mouse.click(start.x, start.y);
  for (const share of [0.5, 0.9]) {
    const to = course[Math.round(share * (course.length - 1))] ?? [0, 0];
    const { x, y } = await onScreen(page, to);
    await page.mouse.move(x, y, { steps: 5 });
    await expect.poll(async () => distance((await drawnLine(hand)).at(-1), to)).toBeLessThan(4);
    const line = await drawnLine(hand);
    const between = course.slice(2, Math.round(share * (course.length - 1)) - 1);
    for (const place of between) expect(Math.min(...line.map((spot) => distance(spot, place)))).toBeLessThan(nearPx);
  }
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
}

/** The line that is being drawn, as places of the film a pixel apart. */
async function drawnLine(hand: Hand): Promise<FilmSpot[]> {
  return filmOnBox(hand.page)
    .locator("svg .drawing path")
    .first()
    .evaluate((path) => {
      if (!(path instanceof SVGPathElement)) return [];
      const length = path.getTotalLength();
      return Array.from({ length: Math.ceil(length) + 1 }, (_, at): [number, number] => {
        const { x, y } = path.getPointAtLength(Math.min(at, length));
        return [x, y];
      });
    });
}

const distance = (a: FilmSpot | undefined, b: FilmSpot): number =>
  a === undefined ? Number.POSITIVE_INFINITY : Math.hypot(a[0] - b[0], a[1] - b[1]);
