import { useRef, useState } from "react";
import { anatomyPart } from "../../../../record/parts/anatomy.ts";
import type { PartOf } from "../../../../record/parts.ts";
import { type LevelPlace, placeWithin, type RootStep, type RootsInHand } from "../../../../record/roots/root-step.ts";
import { useAnnounce } from "../../../parts/announcer.tsx";
import { valueAt, withValueAt } from "../../../record/body-path.ts";
import type { DraftBook } from "../../../record/draft-book.ts";
import { capital } from "../../../words/capital.ts";

/** The roots that are edited, the level that is chosen, and how a step is done. */
export interface RootSteps {
  readonly hand: RootsInHand;
  /** Whether the roots as they were last written can be drawn; else those of the record are in hand, and no step is done. */
  readonly drawable: boolean;
  readonly choose: (at: LevelPlace) => void;
  /** Does a step as one gesture, or says why it can't be done. */
  readonly act: (step: RootStep) => void;
}

/** See {@link RootSteps}. A step is recorded at once and can be taken back by itself. */
export function useRootSteps(
  part: PartOf<"anatomy">,
  tooth: RootsInHand["tooth"],
  book: DraftBook | undefined,
): RootSteps {
  const announce = useAnnounce();
  const [wished, setWished] = useState<LevelPlace>({ root: 0, level: 0 });
  const written = anatomyPart.body.shape.roots.safeParse(valueAt(book?.of(part.id)?.body ?? part.body, "roots"));
  const roots = written.data ?? part.body.roots;
  const hand = { tooth, roots, at: placeWithin(roots, wished) };
  const latest = useRef({ part, book });
  latest.current = { part, book };
  const act = (step: RootStep) => {
    if (!written.success) return announce("First mend what is marked in the fields of the roots");
    if ("cannot" in step) return announce(capital(step.cannot));
    const { part: now, book: into } = latest.current;
    setWished(step.at);
    into?.write({ part: now, title: "Roots and canals" }, (body) => withValueAt(body, "roots", step.roots), step.says);
    into?.commit(now.id);
    announce(step.says);
  };
  return { hand, drawable: written.success, choose: setWished, act };
}
