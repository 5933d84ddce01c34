/** Names the sentence that another tab does the writing. */
export const FOLLOWS = 'another-tab-writes';
