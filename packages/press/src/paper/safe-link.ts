/** A link that may be made one: to a web page or a mail address. Anything else stays text. */
export const safeLink = (link: string | undefined): string | undefined => {
  const text = link?.trim();
  return text && /^(https?:\/\/|mailto:)[^\s<>"]+$/i.test(text) ? text : undefined;
};
