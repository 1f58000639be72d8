import type { ImagePoint } from "../../../core/units.ts";
import type { FilmLook } from "../../../imaging/looked-at.ts";
import type { Gesture } from "../../../record/change.ts";
import type { BoundBody } from "../kernels/film-gestures.ts";
import type { Film } from "../kernels/film-name.ts";
import type { RelativeWindow } from "../kernels/grey-window.ts";
import type { Mark, MarkBody } from "../kernels/mark-shape.ts";
import type { PatientSide } from "../kernels/sides-on-film.ts";
import type { Sight } from "../kernels/sight.ts";
import type { Polarity } from "../tools/tool-step.ts";
import type { ToolName } from "../tools/tools.ts";
import type { RidgeState } from "../workers/film-ridge.ts";
import type { PointedPlace } from "./pointed-place.ts";
import type { FilmView, FilmViewOptions } from "./use-film-view.ts";
import type { ToolUse } from "./use-tool.ts";

/** A mark that is chosen, and which of its places. */
export interface Choice {
  readonly markId: string;
  readonly handle?: number;
}
/** A place on a course, as the share of its way from the orifice. */
export interface PlaceOnCourse {
  readonly markId: string;
  readonly share: number;
}
/** What is marked but waits for a word before it is recorded. */
export type Asking =
  | {
      /** Which canal or root it belongs to. */ readonly what: "owner";
      readonly body: BoundBody;
      readonly at: ImagePoint;
    }
  | { readonly what: "length"; readonly from: ImagePoint; readonly to: ImagePoint };

/** How the film in hand is shown, for other films to be shown the like of it. */
export interface LikeShown {
  readonly window: RelativeWindow;
  readonly look: FilmLook;
}

/** What the light box is given: a film, its marks, and where finished gestures go. */
export interface LightBoxOptions extends FilmViewOptions {
  readonly film: Film;
  readonly presentedOn: string;
  readonly marks: readonly Mark[];
  readonly record: (gesture: Gesture) => void;
  readonly say: (words: string) => void;
  /** Whether the tools are this film's; of several side by side it is one. */
  readonly isInHand?: boolean;
  /** What lies over the film. */
  readonly sight?: Sight;
  /** A window and look to show the film under instead of its own; nothing is recorded of it. */
  readonly like?: LikeShown | undefined;
  /** The patient's side on which the tooth stands. */
  readonly side?: PatientSide | undefined;
  /** The tooth in two digits, for sides to be called as they are in it. */
  readonly tooth?: string;
}

/** Everything that the light box knows and does while a film lies on it. */
export interface LightBox extends LightBoxOptions, FilmView {
  readonly sight: Sight;
  readonly isInHand: boolean;
  /** The place under the pointer. */
  readonly pointed: PointedPlace;
  readonly ridge: RidgeState;
  /** Lines can't be followed on this film. */
  readonly followsNothing: boolean;
  readonly tool: ToolUse;
  readonly take: (tool: ToolName) => void;
  readonly polarity: Polarity;
  readonly follow: (polarity: Polarity) => void;
  readonly chosen: Choice | undefined;
  readonly choose: (choice: Choice | undefined) => void;
  readonly crosshair: ImagePoint | undefined;
  readonly setCrosshair: (at: ImagePoint | undefined) => void;
  readonly place: PlaceOnCourse | undefined;
  readonly setPlace: (place: PlaceOnCourse | undefined) => void;
  readonly asking: Asking | undefined;
  readonly answer: (body: MarkBody | undefined) => void;
  /** The same question about a mark of which more has been said meanwhile. */
  readonly askAgain: (asking: Asking) => void;
  /** Leaves the question: a mark is recorded without a name, a length without millimetres is not recorded. */
  readonly passOver: () => void;
  /** Records how the film is looked at from now on; what was done comes in words. */
  readonly show: (as: Partial<Pick<FilmView, "window" | "look" | "orientation">>, did: string) => void;
  /** Shows a look that a hand is still choosing; nothing is recorded. */
  readonly tryLook: (look: FilmLook | undefined) => void;
  /** What is marked, the mark in the hand as it is now. */
  readonly shown: readonly Mark[];
}
