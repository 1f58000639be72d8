import type { PageModel } from "../../pages/page-model.ts";

/** Sizes of a document on paper: letters in points, pictures in millimetres. */
export interface PaperLook {
  readonly body: number;
  /** What stands back, as an interval or a source, beside the words round it. */
  readonly quietEm: number;
  readonly caption: number;
  readonly footer: number;
  readonly title: number;
  readonly section: number;
  readonly heading: number;
  /** The gap between lines and between paragraphs, in letters. */
  readonly leading: number;
  readonly spacing: number;
  /** How wide a picture stands beside words: one that is wide, any other. */
  readonly wideMm: number;
  readonly besideMm: number;
}

/** In large print, for the patient. */
const large: PaperLook = {
  ...{ body: 12, quietEm: 0.75, caption: 9.5, footer: 9, title: 19, section: 14.5, heading: 12 },
  ...{ leading: 0.55, spacing: 0.66, wideMm: 62, besideMm: 52 },
};

/** Small and dense for who reads a case; in large print for the patient. */
export const paperLooks: Readonly<Record<Exclude<PageModel["as"], "deck">, PaperLook>> = {
  handout: {
    ...{ body: 8.4, quietEm: 1, caption: 6.8, footer: 7.5, title: 17, section: 10.5, heading: 8.2 },
    ...{ leading: 0.5, spacing: 0.6, wideMm: 74, besideMm: 66 },
  },
  letter: {
    ...{ body: 9, quietEm: 0.95, caption: 7.5, footer: 7.5, title: 15, section: 11, heading: 9 },
    ...{ leading: 0.5, spacing: 0.6, wideMm: 70, besideMm: 60 },
  },
  consent: large,
  piece: large,
};
