import type { ReactNode } from "react";
import { Link, useRoute } from "wouter";
import { EmergencyLink } from "./emergency-link.tsx";
import "./page-head.css";

interface PageHeadOptions {
  readonly children?: ReactNode;
  /** What stands at the right end. */
  readonly end?: ReactNode;
}

/** The line at the top of every room: the mark that leads to the logbook, what the room is about, what can be done, and the emergency page. */
export function PageHead({ children, end }: PageHeadOptions) {
  const [atHome] = useRoute("/");
  return (
    <header className="page-head">
      <Link href="/" className="page-head-home" aria-label="Logbook">
        <svg viewBox="0 0 32 32" aria-hidden="true">
          <path d="M8.5 4.5c0 9 2.6 17 8 23.5c4.6-7 7-14.5 7-23.5" />
          <path d="M15.5 6c-.6 6.5.3 11.5 3 15.5" />
          <circle cx="18.7" cy="22" r="2.3" className="page-head-look" />
        </svg>
        {!atHome && <span aria-hidden="true">Logbook</span>}
      </Link>
      <div className="page-head-about">{children}</div>
      <div className="page-head-end">{end}</div>
      <EmergencyLink />
    </header>
  );
}
