/** One value of an entry, ready to be read. */
export interface LedgerLine {
  readonly at: string;
  readonly name: string;
  readonly value: string;
  /** `18.5–19.3`; absent where the value has none. */
  readonly interval?: string;
}
