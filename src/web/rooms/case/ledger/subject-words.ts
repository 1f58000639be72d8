/** What an entry is about, beyond its topic. */
export interface EntrySubject {
  /** The canal whose course was measured, or the instrument that went into it; empty where it is about none. */
  readonly canal: string;
  /** What it rests on, as `final film of 12 Mar 2026`, `findings of 10 Feb 2026` or `plan of 10 Feb 2026`; empty where there is none. */
  readonly film: string;
  /** The day of it; empty where there is none. */
  readonly day: string;
}
