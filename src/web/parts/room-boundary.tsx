import { Component, type ReactNode } from "react";
import { useLocation } from "wouter";
import { groundOf } from "./ground.ts";
import { isMissingPiece, RoomTrouble } from "./room-trouble.tsx";

/** Keeps a fault inside the room in which it happened; going elsewhere leaves it behind. */
export function RoomBoundary({ children }: { readonly children: ReactNode }) {
  const [place] = useLocation();
  return <Boundary place={place}>{children}</Boundary>;
}

interface BoundaryOptions {
  readonly place: string;
  readonly children: ReactNode;
}

/** What broke, and where the person was; nothing while all is well. */
export interface BoundaryState {
  readonly broke: { readonly error: unknown } | undefined;
  readonly place: string;
}

/** React hands faults to classes alone. */
export class Boundary extends Component<BoundaryOptions, BoundaryState> {
  override readonly state: BoundaryState = { place: this.props.place, broke: undefined };

  static getDerivedStateFromError(error: unknown): Pick<BoundaryState, "broke"> {
    return { broke: { error } };
  }

  /** A fault belongs to its place: under another address the room is drawn anew. */
  static getDerivedStateFromProps({ place }: BoundaryOptions, state: BoundaryState): BoundaryState {
    return place === state.place ? state : { place, broke: undefined };
  }

  readonly #openAgain = () => {
    // A piece that could not be fetched is not asked for twice by the same window.
    if (isMissingPiece(this.state.broke?.error)) window.location.reload();
    else this.setState({ broke: undefined });
  };

  override render(): ReactNode {
    const { broke, place } = this.state;
    if (broke === undefined) return this.props.children;
    return <RoomTrouble error={broke.error} ground={groundOf(place)} openAgain={this.#openAgain} />;
  }
}
