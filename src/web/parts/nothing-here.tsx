import { Link } from "wouter";
import "./say-refusal.css";

/** For an address that names no room. */
export const NothingHere = () => (
  <main className="say-whole">
    <h1>There is nothing at this address</h1>
    <p>
      <Link href="/">Go to the logbook</Link>
    </p>
  </main>
);
