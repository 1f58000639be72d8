import { Link } from "wouter";
import { type HandbackGap, handbackGaps } from "../../../../../record/handback-gaps.ts";
import { latest } from "../../../../../record/in-order.ts";
import { type Part, partsOf } from "../../../../../record/parts.ts";
import { Button } from "../../../../parts/button.tsx";
import { goTo } from "./place.tsx";
import { useHandback } from "./use-handback.ts";

/** What the letter would have to leave open; each line leads to where it is written. */
export function StillMissing() {
  const { caseId, handback, parts } = useHandback();
  const gaps = handbackGaps(parts, handback);
  return (
    <section className="form-part" aria-labelledby="handback-missing">
      <h2 id="handback-missing">Missing for the letter</h2>
      {gaps.length === 0 ? (
        <p>● Nothing is missing.</p>
      ) : (
        <ul className="handback-missing">
          {gaps.map((gap) => (
            <li key={gap.says}>
              <GapLink {...{ gap, caseId, parts }} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface GapLinkOptions {
  readonly gap: HandbackGap;
  readonly caseId: string;
  readonly parts: readonly Part[];
}

function GapLink({ gap: { at, of, says }, caseId, parts }: GapLinkOptions) {
  const words = `◇ ${says}`;
  if (at !== undefined) return <Button onClick={() => goTo(at)}>{words}</Button>;
  const part = of === undefined ? undefined : latest(partsOf(parts, of));
  if (part === undefined) return <span>{words}</span>;
  return (
    <Link className="button" href={`/case/${caseId}/${part.id}`}>
      {words}
    </Link>
  );
}
