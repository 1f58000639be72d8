import type { ReactNode } from "react";
import { Link } from "wouter";
import type { Basis } from "../../../../core/basis.ts";
import { SeenMark } from "../../../parts/seen-mark.tsx";
import { useTopics } from "../../../record/readings.ts";

interface BasisViewOptions {
  readonly topic: string;
  readonly basis: Basis | undefined;
  /** What stands after the way to the method's page. */
  readonly children?: ReactNode;
}

/** What a number rests on: formula, assumptions, sources, and the way to its method. */
export function BasisView({ topic, basis, children }: BasisViewOptions) {
  const known = useTopics().data?.find(({ name }) => name === topic);
  const sources = known?.sources.filter(({ id }) => basis?.sources.includes(id)) ?? [];
  return (
    <section>
      {basis && <h3>Formula</h3>}
      {basis && <p>{basis.formula}</p>}
      {basis && basis.assumptions.length > 0 && <h3>Assumed</h3>}
      <ul>
        {basis?.assumptions.map((assumption) => (
          <li key={assumption}>{assumption}</li>
        ))}
      </ul>
      {sources.length > 0 && <h3>Sources</h3>}
      <ul>
        {sources.map(({ id, reference, verification }) => (
          <li key={id}>
            {reference} <SeenMark verification={verification} />
          </li>
        ))}
      </ul>
      <p className="quiet">
        <Link href={`/methods/${topic}`}>How this is computed</Link>
        {children}
      </p>
    </section>
  );
}
