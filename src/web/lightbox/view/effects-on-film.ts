import { type FilmInCase, fragmentBody, markReshaped, traceBody } from "../kernels/film-gestures.ts";
import type { ScreenPoint } from "../kernels/film-placement.ts";
import { pairOf } from "../kernels/film-point.ts";
import type { MarkBody } from "../kernels/mark-shape.ts";
import type { Polarity, ToolEffect } from "../tools/tool-step.ts";
import type { Asking, Choice, LightBox } from "./light-box.ts";

/** What the light box can do when a tool asks for it. */
export interface FilmActs extends FilmInCase, Pick<LightBox, "record" | "say" | "show"> {
  readonly polarity: Polarity;
  readonly ask: (asking: Asking) => void;
  readonly make: (body: MarkBody) => void;
  readonly choose: (choice: Choice | undefined) => void;
  readonly push: (by: ScreenPoint) => void;
}

/** Does what a tool asked for: a question, a recorded gesture, or a step of the film. */
export function carryOut(effect: ToolEffect, acts: FilmActs): unknown {
  const film = acts.film.id;
  switch (effect.do) {
    case "traced":
      return askOwner(effect, acts);
    case "measured":
      return measured(effect, acts);
    case "parted": {
      const { crown, level, apex } = effect;
      const places = { crown: pairOf(crown), level: pairOf(level), apex: pairOf(apex) };
      return acts.ask({ what: "owner", body: { shape: "crownRoot", film, ...places, levelIs: "boneCrest" }, at: apex });
    }
    case "outlined":
      return acts.make({ shape: "outline", film, what: "", points: effect.points.map(pairOf) });
    case "spotted": {
      const spot = { shape: "spot" as const, film, what: "", at: pairOf(effect.at) };
      if (effect.as === "spot") return acts.make(spot);
      return acts.ask({ what: "owner", body: { ...spot, is: effect.as }, at: effect.at });
    }
    case "reshaped":
      return acts.record(markReshaped(effect.mark, effect.body, acts));
    case "chosen":
      return acts.choose(choiceOf(effect));
    case "pushed":
      return acts.push(effect.by);
    case "windowed":
      return acts.show({ window: effect.window }, "Window set");
    case "say":
      return acts.say(effect.words);
  }
}

function askOwner({ as, course }: Extract<ToolEffect, { do: "traced" }>, acts: FilmActs): void {
  const at = course.anchors.at(-1);
  if (at === undefined) return;
  const body = as === "trace" ? traceBody(acts.film, course, acts.polarity) : fragmentBody(acts.film.id, course);
  acts.ask({ what: "owner", body, at });
}

function measured({ as, from, to }: Extract<ToolEffect, { do: "measured" }>, acts: FilmActs): void {
  const ends = { film: acts.film.id, from: pairOf(from), to: pairOf(to) };
  if (as === "known") acts.ask({ what: "length", from, to });
  else if (as === "wall") acts.ask({ what: "owner", body: { shape: "wall", ...ends }, at: to });
  else acts.make({ shape: "distance", what: "", ...ends });
}

function choiceOf({ markId, handle }: Extract<ToolEffect, { do: "chosen" }>): Choice | undefined {
  if (markId === undefined) return undefined;
  return handle === undefined ? { markId } : { markId, handle };
}
