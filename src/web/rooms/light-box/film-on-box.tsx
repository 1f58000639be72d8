import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { AskingWords } from "../../lightbox/view/asking-words.tsx";
import { CornerWords } from "../../lightbox/view/corner-words.tsx";
import { FilmStage } from "../../lightbox/view/film-stage.tsx";
import type { LightBoxOptions } from "../../lightbox/view/light-box.ts";
import { MeasurePanel } from "../../lightbox/view/measure-panel.tsx";
import { ToolBar } from "../../lightbox/view/tool-bar.tsx";
import { useLightBox } from "../../lightbox/view/use-light-box.ts";

interface FilmOnBoxOptions {
  readonly options: LightBoxOptions;
  readonly ledger: readonly LedgerEntry[];
  readonly canals: readonly string[];
  readonly measuring: boolean;
}

/** A film with its tools at the left and its measures at the right. */
export function FilmOnBox({ options, ledger, canals, measuring }: FilmOnBoxOptions) {
  const box = useLightBox(options);
  return (
    <div className="light-box-body">
      <ToolBar box={box} />
      <main className="film-place">
        <FilmStage box={box} />
        <CornerWords box={box} />
        <AskingWords box={box} canals={canals} />
      </main>
      <MeasurePanel box={box} ledger={ledger} canals={canals} measuring={measuring} />
    </div>
  );
}
