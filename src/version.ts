/** The release this code belongs to. The build refuses to run when package.json says another. */
export const version = '0.1.0';
