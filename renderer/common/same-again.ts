/** How long the second click of a double click may come after the first, in milliseconds: a slow hand's. */
const DOUBLE_CLICK = 800;

/**
 * Tells a second click from a second wish: the same input again, while the first is under way or a moment
 * after it came through, is not written twice. Rendering can't tell: a button is drawn as busy only after
 * both clicks of a quick hand have been.
 * @param clock milliseconds, for tests
 */
export function sameAgainGuard(clock: () => number = () => performance.now()) {
  let last: { input: string; until: number } | null = null;
  return {
    /** Whether this input may be sent; if so, it is the last one from now on. */
    admits(input: unknown): boolean {
      const text = JSON.stringify(input) ?? '';
      if (last !== null && last.input === text && clock() < last.until) return false;
      last = { input: text, until: Number.POSITIVE_INFINITY };
      return true;
    },
    /** It came through: what is sent again after a moment is meant. */
    done(): void {
      if (last !== null) last.until = clock() + DOUBLE_CLICK;
    },
    /** It was refused: to send it again is to try again. */
    refused(): void {
      last = null;
    },
  };
}
