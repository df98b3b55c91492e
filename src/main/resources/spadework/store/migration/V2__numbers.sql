-- SPDX-License-Identifier: Apache-2.0
-- The next number of a year is found among those of that year alone.

create index folder_name_begins on folder (name text_pattern_ops);
create index folder_number_begins on folder (number text_pattern_ops) where number <> '';
