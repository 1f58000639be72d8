import { colourOfStandard } from "../../../figures/colour-of-standard.ts";
import "./size-mark.css";

/** The standard's colour of a size: a filled handle with its name; an empty, broken one where the size has none. */
export const SizeMark = ({ colour }: { readonly colour: string | undefined }) => (
  <span className="size-mark">
    <svg viewBox="0 0 14 10" aria-hidden="true" data-none={colour === undefined}>
      <rect x="1" y="1" width="12" height="8" rx="3" fill={colourOfStandard(colour) ?? "none"} />
    </svg>
    {colour ?? "no colour"}
  </span>
);
