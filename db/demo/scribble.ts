import { scatter } from './random.ts';

interface Signature {
  name: string;
  strokes: { x: number; y: number }[][];
  width: number;
  height: number;
}

const WIDTH = 400;
const HEIGHT = 120;

/** Points on a curve through a word: a tall beginning, then loops of all sizes, some below the line. */
function word(from: number, to: number, random: () => number): { x: number; y: number }[] {
  const loops = Math.max(3, Math.round((to - from) / 20));
  const shapes = Array.from({ length: loops + 1 }, (_, index) => {
    const below = index > 1 && random() > 0.82;
    return {
      tall: index === 0 ? 46 + random() * 14 : below ? -26 : 5 + random() ** 2 * 34,
      lean: 3 + random() * 11,
    };
  });
  const steps = loops * 12;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turn = (step / steps) * loops;
    const { tall, lean } = shapes[Math.floor(turn)] ?? { tall: 6, lean: 4 };
    const angle = turn * 2 * Math.PI;
    const along = from + ((to - from) * step) / steps;
    return {
      x: Math.round((along + Math.sin(angle) * lean) * 10) / 10,
      y: Math.round((78 - ((1 - Math.cos(angle)) / 2) * tall - along * 0.03) * 10) / 10,
    };
  });
}

/** An invented signature, as strokes on a pad; the same for the same name. */
export function scribble(name: string): Signature {
  const random = scatter(name);
  const words = name.split(/\s+/).slice(0, 3);
  const letters = words.reduce((sum, each) => sum + [...each].length, 0);
  const strokes: Signature['strokes'] = [];
  let x = 24;
  for (const each of words) {
    const width = ((WIDTH - 60) * Math.max(2, [...each].length)) / Math.max(6, letters);
    strokes.push(word(x, Math.min(WIDTH - 20, x + width - 16), random));
    x += width;
  }
  // A line under it, as people make who sign often.
  if (random() > 0.4)
    strokes.push(
      Array.from({ length: 12 }, (_, step) => ({
        x: 40 + step * 26,
        y: Math.round(92 - Math.sin(step / 3) * 5 - step * 0.4),
      })),
    );
  return { name, strokes, width: WIDTH, height: HEIGHT };
}

/** The name typed in place of a signature. */
export const typedName = (name: string): Signature => ({
  name,
  strokes: [],
  width: WIDTH,
  height: HEIGHT,
});
