// Did Surefire run the rehearsals, and does it show each by its title?
def shown = new File(results).listFiles().collect { it.getText('UTF-8') }.join()

assert shown.contains('name="a leaf marked 0.10 that measures 0.11 proves nothing about 0.10"')
assert shown.contains('name="a_leaf_that_is_not_what_is_stamped_on_it_proves_nothing"')
assert shown.count('<testcase ') > 100
