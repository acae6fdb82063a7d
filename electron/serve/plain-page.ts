function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** A page without script for what goes wrong before the program's own page is there. */
export function plainPage(title: string, sentence: string): string {
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark">
<title>${escaped(title)} – Tappet</title>
<style>body{font:1.125rem/1.5 system-ui,sans-serif;max-width:36rem;margin:15vh auto;padding:0 1rem}</style>
<h1>${escaped(title)}</h1>
<p>${escaped(sentence)}</p>
</html>
`;
}

export const needsKey =
  'This browser has no key to Tappet, or the key was used before. On the computer that Tappet runs on, give the command npm start once more: it prints a new address. Open that one here.';
