import type { Locator, Page } from "playwright-core";
import type { FilmSpot } from "./incisor-films.ts";

/** What a person does with a page, whichever way they do it: by pointer or by keyboard alone. */
export interface Hand {
  readonly page: Page;
  /** Presses a button or follows a link. */
  readonly press: (target: Locator) => Promise<void>;
  /** Writes into a field in place of what it holds, and leaves it. */
  readonly write: (field: Locator, text: string) => Promise<void>;
  /** Sets a field for a day, given as 2026-02-10, and leaves it. */
  readonly writeDay: (field: Locator, day: string) => Promise<void>;
  /** Chooses one answer of a list. */
  readonly choose: (list: Locator, answer: string) => Promise<void>;
  /** Chooses one of several answers that are all in sight. */
  readonly pick: (answer: Locator) => Promise<void>;
  /** Adds a moment to the spine. */
  readonly addMoment: (kind: string) => Promise<void>;
  /** Goes from the case to its light box. */
  readonly openLightBox: () => Promise<void>;
  /** Brings a file to the light box. */
  readonly bringFilm: (file: BroughtFilm) => Promise<void>;
  /** Marks an object of known length on the film that lies on the box. */
  readonly markKnown: (known: { from: FilmSpot; to: FilmSpot; lengthMm: number }) => Promise<void>;
  /** Traces a canal through places from orifice to apex and binds it. */
  readonly trace: (anchors: readonly FilmSpot[], canal: string) => Promise<void>;
  /** Moves an inner anchor of the only course on the film. */
  readonly moveAnchor: (from: FilmSpot, to: FilmSpot, index: number) => Promise<void>;
  /** Takes back the last change. */
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
}

/** A file on its way to the light box. */
export interface BroughtFilm {
  readonly name: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
  readonly by: "button" | "drop" | "paste";
}

/** Waits until the record has taken what was done. */
export async function recorded(page: Page): Promise<void> {
  await page
    .getByRole("status")
    .filter({ hasText: /^(saved|recorded)/ })
    .waitFor();
}

/** The film that lies on the light box. */
export const filmOnBox = (page: Page): Locator => page.getByRole("application", { name: /film of day/ });

/** Waits until a film lies on the box with its pixels drawn. */
export async function filmIsOpen(page: Page): Promise<void> {
  await filmOnBox(page).locator("canvas").waitFor();
}

/** Where a place of the film on the box is on the screen. */
export const onScreen = (page: Page, spot: FilmSpot): Promise<{ x: number; y: number }> =>
  onDrawing(filmOnBox(page), spot);

/** Where a place of a picture is on the screen: the drawing over the picture carries the picture's own pixels. */
export async function onDrawing(picture: Locator, [u, v]: FilmSpot): Promise<{ x: number; y: number }> {
  return picture
    .locator("svg g")
    .first()
    .evaluate(
      (group, [column, row]) => {
        const matrix = group instanceof SVGGraphicsElement ? group.getScreenCTM() : null;
        if (matrix === null) throw new Error("nothing is drawn over the picture");
        const { x, y } = new DOMPoint(column, row).matrixTransform(matrix);
        return { x, y };
      },
      [u, v] as const,
    );
}
