/** placeholder until the words are in */
export interface Vocabulary { readonly dialect: 'US' | 'UK' | null }
