/**
 * Reads the files that people write (plans, models, stands, curves): YAML, or JSON, which is YAML too. A file is checked
 * against a schema before anything is made of it, and every problem found is told with its line, the value there and what
 * is allowed. Uses nothing of the project.
 */
@NullMarked
package org.pumpwright.host.datafile;

import org.jspecify.annotations.NullMarked;
