/**
 * Version of the shapes of the published files. It rises when a column or a field is renamed, is
 * taken away or changes its meaning; new ones at the end do not raise it.
 */
export const publishedVersion = 1;
