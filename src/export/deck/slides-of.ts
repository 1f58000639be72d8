import type { Block, Page } from "../../pages/page-model.ts";
import { isPicture, type PictureBlock, proportionOf } from "../pictures.ts";
import { fillColumns } from "./fill-columns.ts";
import { sizes, type Unit, unitsOf } from "./slide-units.ts";

/** A rectangle on a slide, in inches. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** One slide: its words and pictures, each in its box. */
export interface Slide {
  readonly title: string;
  readonly subtitle?: string;
  readonly pictures: readonly { readonly block: PictureBlock; readonly box: Box }[];
  readonly column: Box;
  readonly units: readonly Unit[];
  readonly notes: readonly string[];
}

/** The slide's size and the part that content may fill, in inches: 16:9. */
export const slideSize = { w: 13.333, h: 7.5 } as const;
const content: Box = { x: 0.65, y: 1.45, w: 12.03, h: 5.35 };
const gap = 0.4;
const captionIn = 0.3;

/** The slides that a page comes to: pictures on the first, words beside or under them, the rest on slides that go on. */
export function slidesOf(page: Page): Slide[] {
  const [picture, ...others] = page.blocks.filter(isPicture);
  const words = page.blocks.filter((block) => !isPicture(block));
  const placed = picture === undefined ? undefined : placedPicture(picture, words.length > 0);
  const first = placed?.rest ?? content;
  const columns = inFewestColumns(words, first);
  const titled = { title: page.title, ...(page.subtitle === undefined ? {} : { subtitle: page.subtitle }) };
  const filled = columns.map(
    (units, at): Slide => ({
      ...titled,
      ...(at === 0 ? {} : { title: `${page.title}, continued` }),
      pictures: at === 0 && placed !== undefined ? [{ block: placed.block, box: placed.box }] : [],
      column: at === 0 ? first : { ...content, w: first.w },
      units,
      notes: at === 0 ? page.notes : [],
    }),
  );
  const more = twoByTwo(others).flatMap((blocks) =>
    blocks.length === 2 ? [besideEachOther(titled, blocks)] : slidesOf({ ...page, blocks, notes: [] }),
  );
  return [...filled, ...more];
}

/** Pictures that follow each other in pairs; one that is far wider than high stands alone. */
function twoByTwo(pictures: readonly PictureBlock[]): PictureBlock[][] {
  const pairs: PictureBlock[][] = [];
  for (const block of pictures) {
    const last = pairs.at(-1);
    const mate = last?.length === 1 ? last[0] : undefined;
    if (last !== undefined && mate !== undefined && standsBeside(mate) && standsBeside(block)) last.push(block);
    else pairs.push([block]);
  }
  return pairs;
}

const standsBeside = (block: PictureBlock): boolean => proportionOf(block) >= 0.45;

/** Two pictures on one slide, each in its half. */
function besideEachOther(titled: Pick<Slide, "title" | "subtitle">, blocks: readonly PictureBlock[]): Slide {
  const half = { ...content, w: (content.w - gap) / 2, h: content.h - captionIn };
  const pictures = blocks.map((block, at) => ({
    block,
    box: fitted({ ...half, x: content.x + at * (half.w + gap) }, proportionOf(block)),
  }));
  return { ...titled, pictures, column: content, units: [], notes: [] };
}

/** How much smaller words may be set where that spares a slide. */
const scales = [1, 0.9, 0.8] as const;

/** Words in as few columns as they come to, and of those as large as they can be. */
function inFewestColumns(words: readonly Block[], first: Box): Unit[][] {
  const heights = { first: first.h, further: content.h };
  const tries = scales.map((scale) =>
    fillColumns(
      words.flatMap((block) => unitsOf(block, first.w, scale)),
      heights,
    ),
  );
  const fewest = Math.min(...tries.map((columns) => columns.length));
  return tries.find((columns) => columns.length === fewest) ?? [[]];
}

/** A wide picture lies above the words, any other stands at their left; alone it fills the slide. */
function placedPicture(block: PictureBlock, withWords: boolean): { block: PictureBlock; box: Box; rest: Box } {
  const proportion = proportionOf(block);
  if (withWords && proportion < 0.55) {
    const box = fitted({ ...content, h: 2.5 }, proportion);
    const top = content.y + box.h + captionIn + 0.15;
    return { block, box, rest: { ...content, y: top, h: content.y + content.h - top } };
  }
  const room = withWords ? { ...content, w: 6.1, h: content.h - captionIn } : { ...content, h: content.h - captionIn };
  const box = fitted(room, proportion);
  const left = box.x + box.w + gap;
  return { block, box, rest: { ...content, x: left, w: content.x + content.w - left } };
}

function fitted(room: Box, proportion: number): Box {
  const w = Math.min(room.w, room.h / proportion);
  return { x: room.x, y: room.y, w, h: w * proportion };
}

/** The heights of the caption under a picture, in inches. */
export const captionBox = ({ x, y, w, h }: Box): Box => ({
  x,
  y: y + h + 0.03,
  w: Math.max(w, 3),
  h: (sizes.caption * 1.6) / 72,
});
