import { useMemo, useState } from "react";
import { emblem } from "../../../figures/emblem.ts";
import type { Figure } from "../../../figures/svg-tree.ts";
import { canalStatesOn } from "../../../record/canal-states.ts";
import type { BodyOf, Part } from "../../../record/parts.ts";
import { thePart } from "../../../record/parts.ts";
import { Button } from "../../parts/button.tsx";
import { FigureView } from "../../parts/figure-view.tsx";
import { ask } from "../../record/api.ts";
import { useTeeth } from "../../record/readings.ts";
import "./moment-emblem.css";

interface MomentEmblemOptions {
  readonly parts: readonly Part[];
  /** The last day that counts. */
  readonly day: string;
  /** Records a first anatomy; absent where the case is only looked at. */
  readonly note?: (body: BodyOf<"anatomy">) => void;
}

/** The tooth with every canal in the state in which this moment left it. */
export function MomentEmblem({ parts, day, note }: MomentEmblemOptions) {
  const teeth = useTeeth();
  const about = thePart(parts, "case")?.body;
  const anatomy = thePart(parts, "anatomy")?.body;
  const tooth = teeth.data?.find(({ twoDigit }) => twoDigit === about?.tooth);
  const figure = useMemo(
    () => tooth && anatomy && readable({ tooth, roots: anatomy.roots, states: canalStatesOn(parts, day) }),
    [tooth, anatomy, parts, day],
  );
  if (about === undefined || tooth === undefined) return <div className="moment-emblem" />;
  if (figure === undefined) return <NoAnatomy tooth={about.tooth} {...(note ? { note } : {})} />;
  return (
    <div className="moment-emblem">
      <FigureView figure={figure} />
    </div>
  );
}

const usualWidthPx = 640;
/** Below this many pixels for a unit of the drawing its names are too small to read. */
const leastScale = 0.75;

/** The emblem at its usual width, wider where a tooth with many canals would else be drawn too small. */
function readable(tooth: Omit<Parameters<typeof emblem>[0], "theme" | "widthPx">): Figure {
  const figure = emblem({ ...tooth, theme: "paper", widthPx: usualWidthPx });
  const width = Number(String(figure.tree.attributes.viewBox).split(" ")[2]);
  const least = Math.round(width * leastScale);
  return least <= figure.widthPx ? figure : emblem({ ...tooth, theme: "paper", widthPx: least });
}

function NoAnatomy({ tooth, note }: { readonly tooth: string; readonly note?: (body: BodyOf<"anatomy">) => void }) {
  const [fault, setFault] = useState<string>();
  if (note === undefined) return <div className="moment-emblem" />;
  const start = async () => {
    try {
      const { roots } = await ask<Pick<BodyOf<"anatomy">, "roots">>(`/teeth/${tooth}/usual`);
      note({ roots, foundBy: [] });
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <div className="moment-emblem moment-emblem-none">
      <p>The roots and canals of this tooth are not noted yet.</p>
      <Button onClick={() => void start()}>Start from the usual form</Button>
      {fault && <p className="look">{fault}</p>}
    </div>
  );
}
