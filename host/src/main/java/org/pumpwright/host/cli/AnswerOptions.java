package org.pumpwright.host.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** Answers to a plan's questions, given beforehand. */
final class AnswerOptions {
    @Option(
            names = "--answer",
            paramLabel = "STEP=WORD",
            description = "An answer to the question of that step, given beforehand. May be given several times.")
    Map<String, String> answers = new LinkedHashMap<>();
}
