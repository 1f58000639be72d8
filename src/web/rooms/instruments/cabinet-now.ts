import { createContext, useContext } from "react";
import type { CabinetItem, CabinetItemOf, CabinetKind } from "../../../record/cabinet/cabinet-item.ts";
import type { CabinetView } from "../../../server/api.ts";
import type { DraftBook } from "../../record/draft-book.ts";

/** The cabinet that is shown, and what can be done in it. */
export interface CabinetAsShown {
  readonly view: CabinetView;
  readonly book: DraftBook;
  /** The item that was added and not yet gone to. */
  readonly added: { current: string | undefined };
  /** Adds an item of a kind and opens it; asks first which instrument it is of, where none is looked at. */
  readonly add: (kind: CabinetKind) => void;
  /** The kind of a new item whose instrument is asked for. */
  readonly asking: CabinetKind | undefined;
  /** The instrument that was asked for; undefined adds nothing. */
  readonly answer: (instrument: string | undefined) => void;
  /** The new material that was asked for; undefined adds nothing. */
  readonly answerStock: (body: CabinetItemOf<"stock">["body"] | undefined) => void;
  /** Takes an item out; it stays in the history. */
  readonly takeOut: (item: CabinetItem) => void;
  /** Notes that a file was sterilised today. */
  readonly sterilised: (fileId: string) => void;
  readonly addHandFiles: () => void;
}

const nowhere = () => {
  throw new Error("a part of the cabinet stands outside of its room");
};

/** See {@link CabinetAsShown}. */
export const CabinetNow = createContext<CabinetAsShown | undefined>(undefined);

/** See {@link CabinetAsShown}. */
export const useCabinetNow = (): CabinetAsShown => useContext(CabinetNow) ?? nowhere();
