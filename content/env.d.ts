declare namespace App {
  interface Locals {
    /** The lesson whose page is being made; its components read their rows from it. */
    lesson?: import('astro:content').CollectionEntry<'lessons'>;
  }
}
