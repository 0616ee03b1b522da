/** A text for people or machines in which no address of a Redis tells who may use it: not all that is typed is read as one. */
export const withoutPassword = (text: string): string => text.replace(/\b(rediss?:\/\/)[^"\n]*@/g, "$1");
