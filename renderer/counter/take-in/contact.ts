export interface Contact {
  phone: string;
  email: string;
}

/**
 * Telephone and e-mail as they are told, one after the other and in any order: the word with an @ is the
 * e-mail, what is left is the telephone, kept as typed.
 */
export function readContact(text: string): Contact {
  const words = text.trim().split(/[\s,;]+/);
  const email = words.find((word) => word.includes('@')) ?? '';
  const phone = text
    .replace(email, ' ')
    .replace(/[\s,;]+/g, ' ')
    .trim();
  return { phone, email };
}
