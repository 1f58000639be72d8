import { randomBytes, timingSafeEqual } from "node:crypto";

/** Who may speak to the server: a one-time code in the printed address becomes a cookie that only this machine's browser holds. */
export interface Sessions {
  /** A new code, good for one use. */
  readonly newCode: () => string;
  /** The token that a code is worth, once; undefined for a code that is unknown or used. */
  readonly redeem: (code: string) => string | undefined;
  readonly isKnown: (token: string | undefined) => boolean;
}

/** The cookie's name. */
export const cookieName = "canalog_session";

/** Sessions that live as long as the process; nothing of them is written anywhere. */
export function makeSessions(): Sessions {
  const codes = new Set<string>();
  const tokens: string[] = [];
  return {
    newCode: () => {
      const code = randomBytes(16).toString("base64url");
      codes.add(code);
      return code;
    },
    redeem: (code) => {
      if (!codes.delete(code)) return undefined;
      const token = randomBytes(32).toString("base64url");
      tokens.push(token);
      return token;
    },
    isKnown: (token) => token !== undefined && tokens.some((known) => same(known, token)),
  };
}

function same(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}
