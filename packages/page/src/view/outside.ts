/** A link that leaves the page takes nothing of it along; one that is no web address is none. */
export const outside = (address: string | undefined) =>
  address !== undefined && /^https?:\/\//i.test(address)
    ? { href: address, rel: "noopener noreferrer", target: "_blank" }
    : undefined;
