/** The initials of who notes something; asks for them and gives nothing where there are none. */
export type Initials = () => string | null;
