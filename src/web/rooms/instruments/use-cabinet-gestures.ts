import { useRef, useState } from "react";
import { useLocation } from "wouter";
import type { CabinetItem, CabinetKind } from "../../../record/cabinet/cabinet-item.ts";
import { instrumentsOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { standardSeries } from "../../../record/cabinet/standard-series.ts";
import { cabinetKindWords } from "../../../record/words/cabinet-words.ts";
import type { CabinetView } from "../../../server/api.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { today } from "../../parts/days-in-words.ts";
import { useCabinetDesk, useCabinetRecording } from "../../record/cabinet.ts";
import { newPartId } from "../../record/new-part-id.ts";
import type { CabinetAsShown } from "./cabinet-now.ts";
import { titleOfItem } from "./item-names.ts";
import { newItemBody } from "./new-items.ts";

/** What can be done in the cabinet, each a finished gesture with its words. */
export function useCabinetGestures(view: CabinetView, shown: string): CabinetAsShown {
  const { book } = useCabinetDesk();
  const record = useCabinetRecording();
  const announce = useAnnounce();
  const [, go] = useLocation();
  const added = useRef<string>(undefined);
  const [asking, ask] = useState<CabinetKind>();
  const put = (kind: CabinetKind, body: CabinetItem["body"]): void => {
    ask(undefined);
    const id = newPartId(kind);
    added.current = id;
    void record({
      words: `${cabinetKindWords[kind]} added`,
      operations: [{ op: "put", id, kind, baseRevision: 0, body }],
    });
    go(`/instruments/${id}`);
  };
  const addOf = (kind: CabinetKind, of: string): void => {
    const body = newItemBody(kind, view.items, { on: today(), of });
    if (body === undefined) {
      if (kind === "stock" || instrumentsOf(view.items).length > 0) ask(kind);
      else announce("Add an instrument first: a file and a sequence are of instruments");
      return;
    }
    put(kind, body);
  };
  const answerStock: CabinetAsShown["answerStock"] = (body) => {
    if (body === undefined) ask(undefined);
    else put("stock", body);
  };
  const add: CabinetAsShown["add"] = (kind) => addOf(kind, shown);
  const answer: CabinetAsShown["answer"] = (instrument) => {
    if (asking !== undefined && instrument !== undefined) addOf(asking, instrument);
    else ask(undefined);
  };
  const takeOut: CabinetAsShown["takeOut"] = (item) => {
    const { id, kind, revision } = item;
    void record({
      words: `${titleOfItem(item)} taken out`,
      operations: [{ op: "remove", id, kind, baseRevision: revision }],
    });
    go("/instruments");
  };
  const sterilised: CabinetAsShown["sterilised"] = (fileId) => {
    const file = view.items.find(({ id }) => id === fileId);
    if (file?.kind !== "file") return;
    const { id, kind, revision, body } = file;
    const operation = {
      ...({ op: "put", id, kind, baseRevision: revision } as const),
      body: { ...body, sterilisedOn: [...body.sterilisedOn, today()] },
    };
    void record({ words: `${titleOfItem(file)}: sterilised today`, operations: [operation] });
  };
  const addHandFiles = () => {
    const operations = standardSeries(view.items).map((body) => ({
      ...({ op: "put", id: newPartId("instrument"), kind: "instrument", baseRevision: 0, body } as const),
    }));
    if (operations.length === 0) return announce("The standard's hand files are all here");
    void record({ words: "The standard's hand files added", operations });
  };
  return { view, book, added, add, asking, answer, answerStock, takeOut, sterilised, addHandFiles };
}
