import { useEffect, useRef } from "react";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { useAnnounce } from "../../../parts/announcer.tsx";
import { ask } from "../../../record/api.ts";
import { valueAt } from "../../../record/body-path.ts";
import type { DraftBook } from "../../../record/draft-book.ts";
import type { ToothView } from "../../../record/readings.ts";
import { CanalBoardView } from "./canal-board-view.tsx";
import "./canal-editor.css";
import { RootKeys } from "./root-keys.tsx";
import { BelowRoot, RootNotes, RootsInNumbers } from "./root-numbers.tsx";
import { RootStrip } from "./root-strip.tsx";
import { StrayNames } from "./stray-names.tsx";
import { UnusualRoots } from "./unusual-roots.tsx";
import { useRootSteps } from "./use-root-steps.ts";
import { useRootsRead } from "./use-roots-read.ts";

interface CanalEditorOptions {
  readonly part: PartOf<"anatomy">;
  readonly tooth: ToothView;
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
}

/** Roots and canals built on a drawing: each root from orifice to foramen, its levels chosen, split, joined and added. */
export function CanalEditor({ part, tooth, book }: CanalEditorOptions) {
  const steps = useRootSteps(part, tooth, book);
  const { hand, drawable, act } = steps;
  const read = useRootsRead(part.id, hand.roots);
  const editor = useRef<HTMLElement>(null);
  const chosen = useRef<HTMLInputElement>(null);
  const announce = useAnnounce();
  // The control of the level that is chosen then stands only after the step has been drawn.
  const back = () => requestAnimationFrame(() => chosen.current?.focus());
  useEffect(() => {
    // Where nothing has the keyboard, as after the usual form was taken, the drawing has it at once.
    if (document.activeElement === document.body) chosen.current?.focus({ preventScroll: true });
  }, []);
  const usual = () => {
    ask<Pick<BodyOf<"anatomy">, "roots">>(`/teeth/${tooth.twoDigit}/usual`).then(
      ({ roots }) => act({ roots, at: { root: 0, level: 0 }, says: "the usual form again" }),
      (error: unknown) => announce(error instanceof Error ? error.message : String(error)),
    );
  };
  const rename = () => {
    const field = editor.current?.querySelector<HTMLInputElement>(".root-strip input");
    field?.focus();
    field?.select();
  };
  const written = valueAt(book?.of(part.id)?.body ?? part.body, "unusualBecause");
  const because = typeof written === "string" ? written : "";
  const giveReason = () => editor.current?.querySelector<HTMLTextAreaElement>(".unusual-roots textarea")?.focus();
  return (
    <section className="canal-editor" ref={editor} aria-label="Drawn roots">
      <RootsInNumbers
        read={read}
        giveReason={book && read.unusual !== undefined && because === "" ? giveReason : undefined}
      />
      <CanalBoardView
        {...{ tooth, steps, chosen }}
        readOnly={book === undefined}
        below={(root) => <BelowRoot name={hand.roots[root]?.name ?? ""} at={root} read={read} />}
      />
      {book && <RootKeys {...{ steps, back, usual, rename }} />}
      {book && <RootStrip steps={steps} />}
      {!drawable && (
        <p className="look">
          What is written here can't be drawn yet; the drawing shows the roots as they are recorded.
        </p>
      )}
      <StrayNames />
      <RootNotes read={read} tooth={tooth.twoDigit} />
      <UnusualRoots unusual={read.unusual} because={because} />
    </section>
  );
}
