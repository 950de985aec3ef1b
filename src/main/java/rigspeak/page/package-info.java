/**
 * The ground worker's page: what a conversation has come to beside a plan, as a board of words and
 * pictures, and the server that sends each new board to whoever looks.
 */
package rigspeak.page;
