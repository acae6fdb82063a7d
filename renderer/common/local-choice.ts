/** A small choice that this machine remembers: who is at the station, how a list was sorted. */
export function rememberedChoice(key: string): string | null {
  try {
    return window.localStorage.getItem(`tappet.${key}`);
  } catch {
    return null;
  }
}

export function rememberChoice(key: string, value: string): void {
  try {
    window.localStorage.setItem(`tappet.${key}`, value);
  } catch {
    // Forgotten at the next start; no harm done.
  }
}
