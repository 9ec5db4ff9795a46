/** How long a prompt that is put aside stays away before it is back by itself [s]. */
export const promptAsideForS = 300;
