/**
 * Exit code of the window's process for a refusal that it has already told the person, such as a
 * store in use: serving the same folder would be refused too.
 */
export const refusedExitCode = 3;
