import type { ReactNode } from "react";
import { Link } from "wouter";
import "./page-head.css";

interface PageHeadOptions {
  readonly children?: ReactNode;
  /** What stands at the right end. */
  readonly end?: ReactNode;
}

/** The line at the top of every room: the mark that leads to the logbook, what the room is about, and what can be done. */
export const PageHead = ({ children, end }: PageHeadOptions) => (
  <header className="page-head">
    <Link href="/" className="page-head-home" aria-label="Logbook">
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <ellipse cx="16" cy="16" rx="13" ry="10.5" />
        <circle cx="10.5" cy="13" r="2" />
        <circle cx="21.5" cy="13" r="2" />
        <circle cx="15" cy="20.5" r="2.4" className="page-head-look" />
      </svg>
    </Link>
    <div className="page-head-about">{children}</div>
    <div className="page-head-end">{end}</div>
  </header>
);
