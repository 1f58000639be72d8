import type { ConstructionName } from "../../../src/pages/on-film/construction-measure.ts";
import type { BodyOf } from "../../../src/record/parts.ts";
import type { OnFilm } from "./film-line.ts";

/** When a film of the list was taken in the telling, and what was marked on it. */
export interface FilmRecipe {
  /** The id of the film's part. */
  readonly id: string;
  /** The time of day, UTC. */
  readonly time: string;
  readonly words: string;
  readonly caption: string;
  readonly visit?: string;
  readonly purpose?: BodyOf<"film">["purpose"];
  /** Courses that were followed: from the orifice, or along the instrument from its stop on. */
  readonly traces?: {
    readonly canals: readonly string[];
    readonly from: "orifice" | "stop";
    readonly polarity: "dark" | "bright";
  };
  /** Whether the ends of the courses were marked as well, as two films at two angles need them. */
  readonly apices?: true;
  /** The canals whose instruments were marked as known lengths. */
  readonly known?: readonly string[];
  /** The canal at whose foramen the edge of a lesion was followed. */
  readonly lesionAt?: string;
  /** A stretch of a canal that was measured, mm from the foramen. */
  readonly stretch?: { readonly what: string; readonly canal: string; readonly fromMm: number; readonly toMm: number };
  /** How far before the foramen the filling of a canal was seen to end, mm, by canal. */
  readonly fillingEnds?: Readonly<Record<string, number>>;
  /** A fragment in a canal, top and tip in mm before the foramen. */
  readonly fragment?: { readonly canal: string; readonly fromMm: number; readonly toMm: number };
  /** Levels of a canal, mm before the foramen. */
  readonly levels?: readonly { readonly what: string; readonly canal: string; readonly beforeMm: number }[];
  /** A wall of a root, as it was read on the film. */
  readonly wall?: {
    readonly canal: string;
    readonly side: "mesial" | "distal";
    readonly outer: OnFilm;
    readonly edge: OnFilm;
  };
  /** Crown and root to the foramen of a canal: cusp and level as they were read on the film. */
  readonly crownRoot?: {
    readonly root: string;
    readonly canal: string;
    readonly cusp: OnFilm;
    readonly boneCrest: OnFilm;
  };
  /** Measures whose construction was drawn over a course, by canal. */
  readonly drawn?: Readonly<Record<string, readonly ConstructionName[]>>;
}

/** What is known of a case's films beside the list: day 0, other names of canals, and a recipe for each by its file's name. */
export interface FilmsPlan {
  readonly listedAs: "A" | "B" | "C";
  readonly firstDay: string;
  /** The case's name of a canal by the list's name, where they differ. */
  readonly renamed: Readonly<Record<string, string>>;
  readonly recipes: Readonly<Record<string, FilmRecipe>>;
}
