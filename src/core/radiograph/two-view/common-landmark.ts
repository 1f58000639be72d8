import type { TwoViewInput } from "./two-view-input.ts";

/** The first landmark of the first view that every view shows. */
export const commonLandmark = ({ views }: TwoViewInput): string | undefined =>
  Object.keys(views[0]?.landmarks ?? {}).find((name) => views.every(({ landmarks }) => name in landmarks));
