import { z } from 'zod';

/** The schema library's own messages, said as people say them. A schema's own message comes first. */

const WORDS: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'yes or no',
  array: 'a list',
  object: 'a group of fields',
  null: 'nothing',
};

const word = (type: string): string => WORDS[type] ?? type;

z.config({
  customError: (issue) => {
    switch (issue.code) {
      case 'invalid_type':
        return issue.input === undefined
          ? 'This is needed.'
          : `This must be ${word(String(issue.expected))}.`;
      case 'unrecognized_keys':
        return 'There is no field of this name here.';
      case 'invalid_value':
        return `Choose one of: ${issue.values.map(String).join(', ')}.`;
      case 'invalid_union':
        return 'This fits none of the forms allowed here.';
      case 'invalid_format':
        return issue.format === 'uuid' ? 'That is not an id of this store.' : undefined;
      case 'too_small':
        return `This must be ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}.`;
      case 'too_big':
        return `This must be ${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}.`;
      default:
        return undefined;
    }
  },
});
