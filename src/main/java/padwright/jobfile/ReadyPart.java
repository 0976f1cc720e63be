package padwright.jobfile;

import java.util.Optional;

/**
 * A ready-made part a job can be started from.
 *
 * @param id such as {@code forearm-rest}; its file's name without the ending
 * @param name what the maker calls it
 * @param about one sentence: what it is and how it is made
 * @param length what its length is the length of, to ask for it; empty for one drawn by its points
 * @param width the same of its width; empty for a round one, whose length is the diameter
 */
public record ReadyPart(
    String id, String name, String about, Optional<String> length, Optional<String> width) {}
