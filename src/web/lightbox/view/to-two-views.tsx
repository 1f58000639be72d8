import { Link, useLocation } from "wouter";
import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import { filmsTracing } from "../two-view/traced-films.ts";
import { useCaseOnBox } from "./case-on-box.ts";

/** The way from a traced canal to its course in space, or to which further film would show it. */
export function ToTwoViews({ mark }: { readonly mark: Mark }) {
  const { caseId, parts } = useCaseOnBox();
  const [, go] = useLocation();
  const canal = mark.body.shape === "trace" ? mark.body.canal : undefined;
  const href = `/case/${caseId}/light-box/two-view/${encodeURIComponent(canal ?? "")}`;
  useShortcut("b", "Light box", "The chosen canal's bend in space", () => (canal === undefined ? false : go(href)));
  if (canal === undefined) return null;
  const count = filmsTracing(parts, canal).length;
  return (
    <Link href={href} className="button button-plain" aria-keyshortcuts="b">
      {count > 1 ? `${canal} in space, from ${count} films` : `Which film would show ${canal} in space?`}
      <KeyHint keys="B" />
    </Link>
  );
}
