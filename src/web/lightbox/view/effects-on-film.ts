import { type FilmInCase, markReshaped } from "../kernels/film-gestures.ts";
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
      return acts.ask({ what: "canal", course: effect.course, polarity: acts.polarity });
    case "measured":
      if (effect.as === "known") return acts.ask({ what: "length", from: effect.from, to: effect.to });
      return acts.make({ shape: "distance", film, what: "", from: pairOf(effect.from), to: pairOf(effect.to) });
    case "outlined":
      return acts.make({ shape: "outline", film, what: "", points: effect.points.map(pairOf) });
    case "spotted":
      return acts.make({ shape: "spot", film, what: "", at: pairOf(effect.at) });
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

function choiceOf({ markId, handle }: Extract<ToolEffect, { do: "chosen" }>): Choice | undefined {
  if (markId === undefined) return undefined;
  return handle === undefined ? { markId } : { markId, handle };
}
