import { type TypicalFigure, typicalRoom } from "../core/safety/solvent/typical-room.ts";

/** The fields of a room that figures are offered for. */
export type RoomFigure = keyof typeof typicalRoom;

/** What may be taken for a room whose own figures are not known, each with where it comes from. */
export const roomOffered: Readonly<Record<RoomFigure, readonly TypicalFigure[]>> = typicalRoom;
