import { useLocation } from "wouter";
import type { CaseView } from "../../../../server/api.ts";
import { canalToShow, tracedCanals } from "../../../lightbox/two-view/traced-films.ts";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { CanalBar } from "./canal-bar.tsx";
import { FilmsBeside } from "./films-beside.tsx";
import { NoTrace } from "./no-trace.tsx";
import { ResultPanel } from "./result-panel.tsx";
import { TwoViewContext } from "./two-view-work.ts";
import { useTwoViewWork } from "./use-two-view-work.ts";

interface CanalInSpaceOptions {
  readonly view: CaseView;
  readonly measuring: boolean;
  readonly canal: string | undefined;
}

/** One canal of the case: its films side by side, and what they give together. */
export function CanalInSpace({ view, measuring, canal }: CanalInSpaceOptions) {
  const [, go] = useLocation();
  const canals = tracedCanals(view.parts);
  const shown = canal ?? canalToShow(view.parts, view.ledger);
  const show = (name: string) => go(`/case/${view.caseId}/light-box/two-view/${encodeURIComponent(name)}`);
  const step = (by: number) => {
    const next = canals[canals.indexOf(shown ?? "") + by];
    if (next !== undefined) show(next);
  };
  useShortcut("[", "Two views", "The canal before", () => step(-1));
  useShortcut("]", "Two views", "The next canal", () => step(1));
  if (shown === undefined || !canals.includes(shown)) return <NoTrace view={view} canal={canal} canals={canals} />;
  return <TwoViewOfCanal key={`${view.caseId} ${shown}`} {...{ view, measuring, canals, show }} canal={shown} />;
}

interface TwoViewOfCanalOptions {
  readonly view: CaseView;
  readonly measuring: boolean;
  readonly canal: string;
  readonly canals: readonly string[];
  readonly show: (canal: string) => void;
}

function TwoViewOfCanal({ view, measuring, canal, canals, show }: TwoViewOfCanalOptions) {
  const work = useTwoViewWork(view, canal, measuring);
  return (
    <TwoViewContext value={work}>
      <div className="two-view-body">
        <main className="two-view-films" aria-label={`Films of ${canal}`}>
          <FilmsBeside />
        </main>
        <ResultPanel />
        <CanalBar parts={view.parts} canals={canals} show={show} />
      </div>
    </TwoViewContext>
  );
}
